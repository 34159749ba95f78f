package changeover.deploy.admin;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** {@code deploy/admin}: finds the command and the installation that the words mean. */
public final class Admin {
    private static final List<AdminCommand> COMMANDS = List.of(
            new InsideCommand("business add", """
                    Opens a business, with its owner's sign-in.
                      deploy/admin business add --slug S --name N --address A --region CA-QC --language fr|en --owner MAIL
                                                [--gst N --qst N --licence N | --small-supplier] [--owner-name N] [--phone N] [--email MAIL]"""),
            new TokenCommand(),
            new CheckCommand(),
            new SqlCommand(),
            new RehearseCommand());

    private Admin() {}

    public static void main(String[] words) {
        changeover.deploy.launcher.Logs.quiet();
        System.exit(run(new ArrayList<>(List.of(words))));
    }

    private static int run(List<String> words) {
        try {
            Path data = takeData(words);
            boolean help = words.removeIf(word -> word.equals("--help") || word.equals("-h"));
            Optional<AdminCommand> named = COMMANDS.stream()
                    .filter(command -> (String.join(" ", words) + " ").startsWith(command.words() + " "))
                    .findFirst();
            if (named.isEmpty()) {
                return unknown(words, help);
            }
            if (help) {
                System.out.println(named.get().help());
                return 0;
            }
            int own = named.get().words().split(" ").length;
            return named.get().run(Running.on(data), words.subList(own, words.size()));
        } catch (Refusing | IllegalArgumentException e) {
            System.err.println(e.getMessage());
        } catch (SQLException e) {
            System.err.println(
                    "The database answered: " + String.valueOf(e.getMessage()).replace('\n', ' '));
        } catch (Exception e) {
            System.err.println("It could not be done: " + e);
        }
        return 1;
    }

    private static int unknown(List<String> words, boolean help) {
        if (!words.isEmpty()) {
            System.err.println(
                    "deploy/admin knows no command " + String.join(" ", words) + "; deploy/admin --help lists them.");
            return 1;
        }
        String text =
                "Does what an operator does by command line, on the installation of --data DIR (~/.local/share/changeover).\n"
                        + String.join(
                                "\n", COMMANDS.stream().map(AdminCommand::help).toList());
        if (help) {
            System.out.println(text);
            return 0;
        }
        System.err.println("deploy/admin needs a command; deploy/admin --help lists them.");
        return 1;
    }

    private static Path takeData(List<String> words) {
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            if (word.startsWith("--data=")) {
                words.remove(i);
                return absolute(word.substring("--data=".length()));
            }
            if (word.equals("--data")) {
                if (i + 1 == words.size()) {
                    throw new Refusing("A folder is missing after --data.");
                }
                words.remove(i);
                return absolute(words.remove(i));
            }
        }
        return Path.of(System.getProperty("user.home"), ".local", "share", "changeover");
    }

    private static Path absolute(String folder) {
        return Path.of(folder).toAbsolutePath().normalize();
    }
}
