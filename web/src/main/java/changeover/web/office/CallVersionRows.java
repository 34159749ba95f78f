package changeover.web.office;

import changeover.contracts.tenants.Businesses;
import changeover.scheduling.calls.Call;
import changeover.scheduling.calls.CallVersion;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a call said before it was put right, first to last, and who put it right when and why. */
@ApplicationScoped
public class CallVersionRows {

    /**
     * An earlier version.
     *
     * @param corrected when the next took its place
     * @param by who wrote the next
     * @param why of the next
     */
    public record Line(
            String caller,
            String phone,
            String trouble,
            String words,
            String heat,
            String risks,
            String promised,
            String told,
            String corrected,
            String by,
            String why) {}

    @Inject
    Businesses businesses;

    /** @param all every version, first to last */
    List<Line> of(List<CallVersion> all, Frame frame) {
        ZoneId zone = businesses.current().zone();
        List<Line> lines = new ArrayList<>();
        for (int at = 0; at + 1 < all.size(); at++) {
            lines.add(line(all.get(at).facts(), all.get(at + 1), frame, zone));
        }
        return lines;
    }

    private static Line line(Call.Facts was, CallVersion next, Frame frame, ZoneId zone) {
        @Nullable Instant promised = was.promisedBy();
        String told = was.told() == null ? "" : was.told().format(frame.locale());
        String toldWords = was.toldWords() == null ? "" : was.toldWords();
        return new Line(
                was.caller(),
                was.phone() == null ? "" : was.phone(),
                was.trouble().wording().in(frame.locale()),
                was.words(),
                was.heat().wording().in(frame.locale()),
                CallRows.risks(was.risks(), frame),
                promised == null ? "" : CallRows.inWords(promised, frame, zone),
                told.isEmpty() || toldWords.isEmpty() ? told + toldWords : told + ", " + toldWords,
                CallRows.inWords(next.at(), frame, zone),
                next.by() == null ? "" : next.by(),
                next.why() == null ? "" : next.why());
    }
}
