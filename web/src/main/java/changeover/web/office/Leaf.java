package changeover.web.office;

import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.UriInfo;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A long list is shown a page at a time: which of its rows, and the addresses of the pages before and after.
 *
 * @param skip rows before this page
 * @param count rows of the whole list
 * @param before empty on the first page, as {@code after} on the last
 */
public record Leaf(int skip, int count, String before, String after) {

    /** As many rows as a page holds. */
    static final int SIZE = 100;

    /** The page that the address asks for; one beyond the last is the last. */
    static Leaf of(UriInfo asked, int count) {
        return of(asked, "page", count);
    }

    /** @param name of the page's number in the address, where a page has two lists */
    static Leaf of(UriInfo asked, String name, int count) {
        return of(asked.getRequestUri().getRawPath(), asked.getQueryParameters(), name, count);
    }

    /** @param path where the list stands when the address that was asked is another */
    static Leaf of(String path, MultivaluedMap<String, String> query, String name, int count) {
        int last = Math.max(1, Math.ceilDiv(count, SIZE));
        int page = Math.min(skip(query, name) / SIZE + 1, last);
        return new Leaf(
                (page - 1) * SIZE,
                count,
                page == 1 ? "" : address(path, query, name, page - 1),
                page == last ? "" : address(path, query, name, page + 1));
    }

    /** The rows before the page that is asked for, however many there are. */
    static int skip(MultivaluedMap<String, String> query, String name) {
        String said = query.getFirst(name);
        if (said != null && !said.matches("[1-9]\\d{0,4}")) {
            throw new NotFoundException();
        }
        return said == null ? 0 : (Integer.parseInt(said) - 1) * SIZE;
    }

    /** Of a list that is read whole. */
    <T> List<T> shown(List<T> all) {
        return all.subList(Math.min(skip, all.size()), Math.min(skip + SIZE, all.size()));
    }

    /** The page's own address. */
    String here(String path, MultivaluedMap<String, String> query, String name) {
        return address(path, query, name, skip / SIZE + 1);
    }

    public boolean several() {
        return count > SIZE;
    }

    public int first() {
        return skip + 1;
    }

    public int last() {
        return Math.min(count, skip + SIZE);
    }

    private static String address(String path, MultivaluedMap<String, String> query, String name, int page) {
        Stream<Map.Entry<String, String>> others = query.entrySet().stream()
                .filter(one -> !one.getKey().equals(name))
                .flatMap(one -> one.getValue().stream().map(value -> Map.entry(one.getKey(), value)));
        return path + "?"
                + Stream.concat(others, Stream.of(Map.entry(name, String.valueOf(page))))
                        .map(one -> inAddress(one.getKey()) + "=" + inAddress(one.getValue()))
                        .collect(Collectors.joining("&"));
    }

    private static String inAddress(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
