package changeover.deploy;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;

/** Without words the application serves its pages; with words it does one command, opens nothing and ends. */
@QuarkusMain
public final class Main {
    private Main() {}

    public static void main(String... words) {
        if (words.length == 0) {
            Quarkus.run();
            return;
        }
        System.setProperty("quarkus.http.host-enabled", "false");
        System.setProperty("quarkus.scheduler.enabled", "false");
        System.setProperty("quarkus.log.console.stderr", "true");
        System.setProperty("quarkus.log.level", "WARN");
        Quarkus.run(Commands.class, words);
    }
}
