package changeover.scheduling.visits;

import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.Who;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** The task of {@link RecountTest} as an agreement promises it. */
final class ABelt {

    private ABelt() {}

    /** @param done its last day; null while nobody knows */
    static PromisedTask last(Cadence cadence, @Nullable String done) {
        History history = done == null ? History.NONE : History.doneOn(LocalDate.parse(done));
        return new PromisedTask(RecountTest.MACHINE, RecountTest.TASK, Who.TECHNICIAN, 30, cadence, false, history);
    }
}
