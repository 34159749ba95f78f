package changeover.billing.documents;

import java.util.List;
import java.util.Set;
import java.util.UUID;

/**
 * What must be known of a home before anything is touched, in words.
 *
 * @param stopped each thing that must not be used there, of the home and of its building
 * @param findings that stopped one of these
 * @param shut that it is shut on that day, and whether heat and water are off; empty where it is open
 */
public record Beware(List<String> stopped, Set<UUID> findings, String shut) {

    static final Beware NOTHING = new Beware(List.of(), Set.of(), "");

    public Beware {
        stopped = List.copyOf(stopped);
        findings = Set.copyOf(findings);
    }
}
