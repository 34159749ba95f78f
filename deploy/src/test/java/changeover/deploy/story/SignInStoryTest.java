package changeover.deploy.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** An owner whose business was opened by command line comes in through Keycloak with the password that serves once, in either language. */
@Tag("browser")
class SignInStoryTest {
    private static Installed installed;

    @BeforeAll
    static void start() {
        installed = Installed.start(Path.of("target", "story", "opened"), "--no-demo");
    }

    @AfterAll
    static void stop() {
        installed.close();
    }

    @Test
    void an_owner_in_quebec_comes_in_in_french() {
        comesIn("fr", "CA-QC", "chauffage-exemple", "claire.exemple@example.com");
    }

    @Test
    void an_owner_in_ontario_comes_in_in_english() {
        comesIn("en", "CA-ON", "example-heating", "ann.example@example.com");
    }

    @Test
    void every_invariant_holds_afterwards() {
        assertEquals("check all ok", installed.admin("check"));
    }

    private static void comesIn(String language, String region, String slug, String mail) {
        String opened = installed.admin(
                "business",
                "add",
                "--slug",
                slug,
                "--name",
                "Example 555-0100",
                "--address",
                "1 Example Street",
                "--region",
                region,
                "--language",
                language,
                "--owner",
                mail,
                "--small-supplier");
        try (Browser browser = new Browser(language, 1280)) {
            browser.signIn(
                    installed.url() + "/" + slug,
                    mail,
                    opened.replaceAll(".* password=", ""),
                    "a long new pass phrase");
            browser.waitForAddress(installed.url() + "/" + slug + "/");
            String spoken = browser.find("html").getAttribute("lang");
            assertTrue(spoken != null && spoken.startsWith(language), () -> "the page speaks " + spoken);
            browser.walked();
        }
    }
}
