package org.barreltally.web.csv;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotAcceptableException;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.barreltally.refusal.InvalidField;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;

/**
 * Answers any list as CSV, where that is asked for by {@code Accept: text/csv} or {@code ?as=csv}.
 * The resource answers as it always does, with its own checks of roles and filters, and the answer
 * is turned into rows here.
 *
 * <p>Without {@code limit} the whole list is written: the resource is asked for one part after the
 * other, each in a transaction of its own, so that a list of any length needs the memory of one
 * part. With {@code limit} it is the one part that JSON gives, and the header Link names the next.
 */
public class CsvAnswers {

  private static final String ASKED = CsvAnswers.class.getName();
  private static final String API = "/api/";
  private static final Set<String> READING = Set.of("GET", "HEAD");

  private final ObjectMapper mapper;
  private final Map<Method, Optional<Listing>> known = new ConcurrentHashMap<>();

  @Inject
  CsvAnswers(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  /** Takes note of the wish and lets the resource be found that answers the list in JSON. */
  @ServerRequestFilter(preMatching = true)
  public void hear(ContainerRequestContext request) {
    List<MediaType> acceptable = acceptable(request); // before anything is done
    UriInfo address = request.getUriInfo();
    if (!READING.contains(request.getMethod())
        || !address.getRequestUri().getPath().startsWith(API)) {
      return;
    }
    String as = address.getQueryParameters().getFirst("as");
    if (as != null && !as.equals("csv") && !as.equals("json")) {
      throw new InvalidField("as", "Give csv or json, or leave it out.");
    }
    if ("csv".equals(as)) {
      note(request, Asked.IN_ADDRESS, MediaType.WILDCARD);
    } else if (as == null && Asked.accepts(acceptable)) {
      note(request, Asked.IN_ACCEPT, MediaType.APPLICATION_JSON);
    }
  }

  /** Says in words what the framework finds out by failing. */
  private static List<MediaType> acceptable(ContainerRequestContext request) {
    try {
      return request.getAcceptableMediaTypes();
    } catch (IllegalArgumentException unreadable) {
      throw new InvalidField(
          "Accept", "The header Accept names no media type, as application/json does.");
    }
  }

  private static void note(ContainerRequestContext request, Asked asked, String accept) {
    request.setProperty(ASKED, asked);
    request.getHeaders().putSingle(HttpHeaders.ACCEPT, accept);
  }

  /** Refuses the wish where the address answers no list. */
  @ServerRequestFilter
  public void check(ContainerRequestContext request, ResourceInfo resource) {
    Object asked = request.getProperty(ASKED);
    if (asked == null || listing(resource).isPresent()) {
      return;
    }
    if (asked == Asked.IN_ADDRESS) {
      throw new InvalidField("as", "This address answers no list, so leave it out.");
    }
    throw new NotAcceptableException();
  }

  /** Turns the answer of a list into rows. */
  @ServerResponseFilter
  public void answer(
      ContainerRequestContext request, ContainerResponseContext response, ResourceInfo resource) {
    if (resource.getResourceMethod() == null || response.getStatus() != 200) {
      return;
    }
    Optional<Listing> listing = listing(resource);
    if (listing.isEmpty()) {
      return;
    }
    response.getHeaders().add(HttpHeaders.VARY, HttpHeaders.ACCEPT);
    if (request.getProperty(ASKED) instanceof Asked asked) {
      write(request, response, listing.get(), asked);
    }
  }

  private void write(
      ContainerRequestContext request,
      ContainerResponseContext response,
      Listing listing,
      Asked asked) {
    UriInfo address = request.getUriInfo();
    Object first = response.getEntity();
    boolean whole = !address.getQueryParameters().containsKey("limit") && listing.inParts();
    String next = listing.nextOf(first);
    if (!whole && next != null) {
      response
          .getHeaders()
          .add(
              HttpHeaders.LINK,
              "<%s>; rel=\"next\""
                  .formatted(
                      address.getRequestUriBuilder().replaceQueryParam("after", next).build()));
    }
    response
        .getHeaders()
        .putSingle(
            HttpHeaders.CONTENT_DISPOSITION,
            "attachment; filename=\"%s.csv\"".formatted(name(address)));
    response.setEntity(
        new CsvTable(
            mapper,
            listing,
            first,
            whole ? Parts.after(CurrentRequestManager.get(), listing) : Parts.none(),
            asked == Asked.IN_ADDRESS),
        new Annotation[0],
        Asked.CSV.withCharset("UTF-8"));
  }

  private Optional<Listing> listing(ResourceInfo resource) {
    return known.computeIfAbsent(
        resource.getResourceMethod(), method -> Listing.of(method, mapper));
  }

  /** A name for the file: the address without {@code /api}, as letters, digits and dashes. */
  private static String name(UriInfo address) {
    List<String> parts =
        Stream.of(address.getRequestUri().getPath().substring(API.length()).split("/"))
            .map(part -> part.replaceAll("[^A-Za-z0-9-]", ""))
            .filter(part -> !part.isEmpty())
            .toList();
    return parts.stream().collect(Collectors.joining("-"));
  }
}
