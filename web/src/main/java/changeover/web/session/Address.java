package changeover.web.session;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a path is about before anything is looked up. Odd spellings (escapes, empty or dotted segments, matrix
 * parameters in the business's name) lead nowhere.
 */
record Address(Kind kind, String slug) {

    enum Kind {
        OPEN,
        MACHINE_ROOM,
        DOORSTEP,
        CUSTOMER,
        BUSINESS,
        API,
        NOWHERE
    }

    private static final Pattern SLUG = Pattern.compile("[a-z0-9][a-z0-9-]{1,38}[a-z0-9]");
    private static final Set<String> SHELVES =
            Set.of("css", "fonts", "js", "img", "webjars", "signed-out", "favicon.ico", "robots.txt");

    /** Open to whoever holds a link: the customer's page, and calendars. */
    private static final Set<String> BY_LINK = Set.of("yours", "calendars");

    static Address of(String path) {
        List<String> parts = List.of(path.substring(Math.min(1, path.length())).split("/", -1));
        String first = parts.getFirst();
        if (first.isEmpty() && parts.size() == 1) {
            return new Address(Kind.DOORSTEP, "");
        }
        if (first.equals("sign-out")) {
            return new Address(Kind.DOORSTEP, "");
        }
        if (SHELVES.contains(first)) {
            return new Address(Kind.OPEN, "");
        }
        if (first.equals("q")) {
            boolean health = parts.size() > 1 && parts.get(1).equals("health");
            return new Address(health ? Kind.OPEN : Kind.MACHINE_ROOM, "");
        }
        if (first.equals("api")) {
            boolean whole = parts.size() >= 4 && parts.get(1).equals("v1");
            return whole && isSlug(parts.get(2)) ? new Address(Kind.API, parts.get(2)) : new Address(Kind.NOWHERE, "");
        }
        if (!isSlug(first)) {
            return new Address(Kind.NOWHERE, "");
        }
        boolean byLink = parts.size() > 1 && BY_LINK.contains(parts.get(1));
        return new Address(byLink ? Kind.CUSTOMER : Kind.BUSINESS, first);
    }

    private static boolean isSlug(String part) {
        return SLUG.matcher(part).matches();
    }
}
