package changeover.scheduling.closeout;

import java.util.List;

/** Texts that hostile and broken clients send. */
final class HostileTexts {

    /** What a hostile or broken client puts into a field. */
    static final List<String> ALL = List.of(
            "\"NaN\"",
            "\"1e999\"",
            "1e999",
            "1e99999",
            "-1",
            "\"-0.5\"",
            "[]",
            "{}",
            "true",
            "\"\\u0000\"",
            "\"a\\u0000b\"",
            "\"\\ud800\"",
            "\"<script>alert(1)</script>\"",
            "\"'; drop table visit; --\"",
            "\"{{7*7}}\"",
            "\"\\u202etxt\"",
            "\"\\r\\nSet-Cookie: a=b\"",
            "999999999999999999999",
            "\"\"",
            "null",
            "\"" + "x".repeat(9000) + "\"",
            "\"" + "y".repeat(50_000) + "\"",
            "[[[[[[[[[[1]]]]]]]]]]",
            "\"00000000-0000-0000-0000-000000000000\"",
            "\"\\ufeff12\"",
            "0.00000000000000000001");

    private HostileTexts() {}
}
