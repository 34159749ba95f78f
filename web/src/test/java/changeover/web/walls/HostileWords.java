package changeover.web.walls;

import java.util.List;
import java.util.Random;

/** What hostile people and broken programs write into a field. */
final class HostileWords {

    /** Marks whatever must never come back as it was written. */
    static final List<String> NEVER_RAW =
            List.of("<script>walls", "<img src=walls", "<svg onload=walls", "\" onfocus=walls");

    static final List<String> ALL = List.of(
            "\"><script>walls()</script>",
            "'; drop table visit; --",
            "' or '1'='1",
            "1); delete from home where (1=1",
            "<img src=walls onerror=walls()>",
            "</textarea><svg onload=walls()>",
            "\" onfocus=walls() autofocus=\"",
            "{inject:csrf.token}",
            "{#include layout/desk}{/include}",
            "${7*7}",
            "{{7*7}}",
            "a\r\nSet-Cookie: walls=1",
            "a\nLocation: https://walls.example.com",
            "a\u0000b",
            "\u0000",
            "\u202Etxt.exe",
            "\u2066\u2069\u200B",
            "\uFEFF12",
            "e\u0301".repeat(40),
            "\uD83D\uDE00",
            "x".repeat(101_000),
            "x".repeat(10_001),
            "y".repeat(300),
            "-1",
            "-0",
            "0",
            "1e999",
            "1E2",
            "0x10",
            "NaN",
            "Infinity",
            "99999999999999999999999999",
            "2147483648",
            "9223372036854775808",
            "0.00000000000000000001",
            "1,000,000.00",
            "1.2.3",
            "\u0661\u0662",
            "=1+1",
            "@SUM(A1)",
            "+cmd|' /C calc'!A0",
            "2026-02-30",
            "2026-13-01",
            "0000-00-00",
            "+999999999-12-31",
            "-4712-01-01",
            "9999-12-31",
            "10000-01-01",
            "31/12/2026",
            "25:61",
            "24:00",
            "00000000-0000-0000-0000-000000000000",
            "not-an-id",
            "../../etc/passwd",
            "javascript:walls()",
            "//walls.example.com/",
            "[]",
            "null",
            "undefined",
            "true",
            "%00%0d%0a",
            "&#x3c;b&#x3e;",
            " ",
            "");

    private HostileWords() {}

    /** A few, never the same few; or all of them. */
    static List<String> some(int howMany, Random random) {
        if (howMany >= ALL.size()) {
            return ALL;
        }
        return random.ints(0, ALL.size())
                .distinct()
                .limit(howMany)
                .mapToObj(ALL::get)
                .toList();
    }
}
