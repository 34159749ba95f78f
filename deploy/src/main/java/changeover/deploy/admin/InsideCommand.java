package changeover.deploy.admin;

import changeover.deploy.launcher.Inside;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** A command that needs the product's own verbs: the application does it, started once more without its pages. */
record InsideCommand(String words, String help) implements AdminCommand {

    @Override
    public int run(Running running, List<String> rest) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of(words.split(" ")));
        all.addAll(rest);
        all.add("--data=" + running.data());
        return Inside.run(running.data(), running.environment(), all);
    }
}
