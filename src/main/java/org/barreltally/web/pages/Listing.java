package org.barreltally.web.pages;

import io.quarkus.qute.TemplateData;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.UriBuilder;
import jakarta.ws.rs.core.UriInfo;
import java.util.Comparator;
import java.util.List;

/**
 * A list as a page shows it: sorted by the column that the address names ({@code sort=tag}, or
 * {@code sort=-tag} the other way round), a part of it at a time ({@code page=2}). Filters that
 * stand in the address stay there.
 */
@TemplateData
public final class Listing<T> {

  /** Rows of a page. */
  public static final int ROWS = 50;

  private final List<T> rows;
  private final int total;
  private final int page;
  private final String sort;
  private final UriInfo uri;

  private Listing(List<T> rows, int total, int page, String sort, UriInfo uri) {
    this.rows = rows;
    this.total = total;
    this.page = page;
    this.sort = sort;
    this.uri = uri;
  }

  /** What the address asks of all rows, which come in the order that holds without a sort. */
  public static <T> Listing<T> of(List<T> all, List<Column<T>> columns, UriInfo uri) {
    MultivaluedMap<String, String> asked = uri.getQueryParameters();
    String sort = asked.getFirst("sort");
    List<T> sorted = sort == null ? all : sorted(all, columns, sort);
    int pages = Math.max(1, (all.size() + ROWS - 1) / ROWS);
    int page = Math.min(pages, Math.max(1, number(asked.getFirst("page"))));
    return new Listing<>(
        sorted.subList((page - 1) * ROWS, Math.min(all.size(), page * ROWS)),
        all.size(),
        page,
        sort == null ? "" : sort,
        uri);
  }

  /** The same list with other rows made of its rows, sorted as they were. */
  public <R> Listing<R> as(java.util.function.Function<T, R> row) {
    return new Listing<>(rows.stream().map(row).toList(), total, page, sort, uri);
  }

  private static <T> List<T> sorted(List<T> all, List<Column<T>> columns, String sort) {
    boolean back = sort.startsWith("-");
    String key = back ? sort.substring(1) : sort;
    return columns.stream()
        .filter(column -> column.key().equals(key))
        .findFirst()
        .map(column -> sorted(all, back ? column.order().reversed() : column.order()))
        .orElse(all);
  }

  private static <T> List<T> sorted(List<T> all, Comparator<T> order) {
    return all.stream().sorted(order).toList();
  }

  private static int number(String text) {
    return text != null && text.matches("[0-9]{1,6}") ? Integer.parseInt(text) : 1;
  }

  public List<T> rows() {
    return rows;
  }

  /** How many rows there are on all pages. */
  public int total() {
    return total;
  }

  public boolean isEmpty() {
    return total == 0;
  }

  public int page() {
    return page;
  }

  public int pages() {
    return Math.max(1, (total + ROWS - 1) / ROWS);
  }

  /** {@code ascending, descending, none}: how the list is sorted by a column. */
  public String sortedBy(String key) {
    return sort.equals(key) ? "ascending" : sort.equals("-" + key) ? "descending" : "none";
  }

  /** The address of this list sorted by a column, or the other way round if it is already. */
  public String sortAddress(String key) {
    return address("sort", sort.equals(key) ? "-" + key : key, "page");
  }

  /** The address of another part of the list. */
  public String pageAddress(int number) {
    return address("page", String.valueOf(number), null);
  }

  private String address(String name, String value, String without) {
    UriBuilder address = UriBuilder.fromPath(uri.getRequestUri().getRawPath());
    uri.getQueryParameters()
        .forEach(
            (key, values) -> {
              if (!key.equals(name) && !key.equals(without)) {
                values.stream()
                    .filter(text -> !text.isEmpty())
                    .forEach(text -> address.queryParam(key, "{v}").resolveTemplate("v", text));
              }
            });
    return address.queryParam(name, "{v}").resolveTemplate("v", value).build().toString();
  }
}
