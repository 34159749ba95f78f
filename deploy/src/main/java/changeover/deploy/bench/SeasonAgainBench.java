package changeover.deploy.bench;

import changeover.deploy.Command;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;

/** The same season once more writes nothing, and takes next to no time of what writing it took. */
@ApplicationScoped
public class SeasonAgainBench implements Command {
    @Inject
    SeasonBench season;

    @Override
    public String words() {
        return "bench season-again";
    }

    @Override
    public void run(List<String> rest) throws Exception {
        System.out.println(
                season.measure("season-again", SeasonBench.size(rest), Ratios.ofTimes("season-again", "0.15", "0.05")));
    }
}
