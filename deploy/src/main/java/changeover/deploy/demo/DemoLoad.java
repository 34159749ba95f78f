package changeover.deploy.demo;

import changeover.contracts.Examples;
import changeover.contracts.tenants.Doors;
import changeover.contracts.tenants.SettableClock;
import changeover.deploy.Command;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** Loads the demonstration: opens both shops a year ago and lets their year pass. */
@ApplicationScoped
public class DemoLoad implements Command {

    @Inject
    SettableClock clock;

    @Inject
    Doors doors;

    @Inject
    DemoShop shop;

    @Override
    public String words() {
        return "demo load";
    }

    /** {@code --sign-ins FILE}: where the sign-ins are written, for the launcher to print. */
    @Override
    @ActivateRequestContext
    public void run(List<String> rest) throws IOException {
        var lines = new ArrayList<String>();
        LocalDate today = LocalDate.now(clock.withZone(ZoneId.of("America/Toronto")));
        for (Examples.Shop example : Examples.SHOPS) {
            if (doors.tenant(example.slug()).isEmpty()) {
                lines.addAll(shop.live(example, today));
            }
        }
        clock.reset();
        int at = rest.indexOf("--sign-ins");
        if (at >= 0 && at + 1 < rest.size()) {
            Files.write(Path.of(rest.get(at + 1)), lines);
        }
    }
}
