package changeover.deploy.launcher;

import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The launcher speaks in its own lines; the libraries under it keep quiet unless something is wrong. */
public final class Logs {
    private Logs() {}

    public static void quiet() {
        Logger root = Logger.getLogger("");
        root.setLevel(Level.SEVERE);
        for (Handler handler : root.getHandlers()) {
            handler.setLevel(Level.SEVERE);
        }
    }
}
