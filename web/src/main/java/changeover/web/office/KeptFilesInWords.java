package changeover.web.office;

import changeover.billing.bank.KeptFiles;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;

/** The files of banks that were taken in, as rows. */
@ApplicationScoped
class KeptFilesInWords {

    private static final int SHOWN = 12;

    /** @param back how many of its lines would go */
    public record Row(UUID id, String day, String bank, String name, int lines, int back) {}

    @Inject
    KeptFiles files;

    List<Row> newest(Frame frame) {
        return files.newest(SHOWN).stream()
                .map(one -> new Row(one.id(), frame.brief(one.on()), one.bank(), one.name(), one.lines(), one.unsaid()))
                .toList();
    }
}
