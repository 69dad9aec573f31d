package org.barreltally.watch.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.function.Function;
import org.barreltally.watch.Watch;
import org.barreltally.watch.WatchItem;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What to look at. */
@Path("/api/watch")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Watch")
public class WatchApi {

  private final Watch watch;

  WatchApi(Watch watch) {
    this.watch = watch;
  }

  @GET
  @Operation(
      summary = "What to look at in the storerooms, and why",
      description =
          "More promised than there is, warm storerooms, supplies that run low, readings near a"
              + " grade line, jars and barrels whose colour was not read for long, lots held for"
              + " long. It advises; you look and decide.")
  public Page<WatchItem> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        watch.list(page.after(Function.identity()).orElse(null), page.limit() + 1), WatchItem::key);
  }
}
