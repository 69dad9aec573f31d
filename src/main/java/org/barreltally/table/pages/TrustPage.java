package org.barreltally.table.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import io.vertx.core.http.HttpServerRequest;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** How a phone learns to trust this program, and how it unlearns it. Nobody is signed in here. */
@Path("/phones/trust")
@Blocking
public class TrustPage {

  @CheckedTemplate(basePath = "table")
  static class Templates {
    static native TemplateInstance trust(String fingerprint, String name, String table);
  }

  private final Authority authority;
  private final TableAddress addresses;
  private final HttpServerRequest request;

  @Inject
  TrustPage(Authority authority, TableAddress addresses, HttpServerRequest request) {
    this.authority = authority;
    this.addresses = addresses;
    this.request = request;
  }

  @GET
  @Produces(MediaType.TEXT_HTML)
  @Operation(hidden = true)
  public TemplateInstance show() {
    X509Certificate certificate = authority.certificate().orElse(null);
    return Templates.trust(
        certificate == null ? null : Authority.fingerprint(certificate),
        certificate == null ? null : certificate.getSubjectX500Principal().getName(),
        addresses.table(addresses.choices(request).get(0)));
  }

  /** The certificate in the form and under the type that phones take for installing. */
  @GET
  @Path("/barreltally-authority.crt")
  @Produces("application/x-x509-ca-cert")
  @Operation(hidden = true)
  public Response download() throws CertificateEncodingException {
    X509Certificate certificate = authority.certificate().orElseThrow(NotFoundException::new);
    return Response.ok(certificate.getEncoded())
        .header("Content-Disposition", "attachment; filename=\"barreltally-authority.crt\"")
        .build();
  }
}
