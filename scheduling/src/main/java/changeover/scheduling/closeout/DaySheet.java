package changeover.scheduling.closeout;

import changeover.contracts.catalogue.Caution;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.PartKind;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.Sentence;
import changeover.contracts.catalogue.Task;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.ReportFacts.FindingFact;
import changeover.scheduling.closeout.ReportFacts.Last;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.VanList;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A technician's whole day as one document: the stops in order with everything that must be known before a door opens, and
 * what is needed to close each out without asking again. Limits and cautions are data in it.
 *
 * @param kinds of equipment, when a home of the day is to be read
 * @param parts what the business carries, with what the van holds
 * @param load what to take along this morning
 * @param notCarried what tasks need and the business has no part for
 */
public record DaySheet(
        UUID technicianId,
        String technician,
        LocalDate day,
        List<Stop> stops,
        List<Caution> cautions,
        List<Sentence> sentences,
        List<Kind> kinds,
        List<VanPart> parts,
        VanList load,
        List<DayPlan.Load> notCarried) {

    /**
     * @param codes keys and codes in the clear, on the visit's own day only
     * @param ended how the visit ended; null while it is open
     * @param version of the closure; nought while it is open
     */
    public record Stop(
            UUID visitId,
            UUID homeId,
            String kind,
            LocalTime starts,
            LocalTime ends,
            int minutes,
            @Nullable String ended,
            int version,
            @Nullable String note,
            HomeFacts home,
            List<Code> codes,
            List<Danger> hazards,
            List<MachineAtHand> machines,
            List<FindingFact> openFindings,
            List<TaskLine> tasks,
            List<Said> said,
            List<DayPlan.Load> load) {}

    /** @param opens who lets us in */
    public record HomeFacts(
            String address,
            @Nullable String opens,
            @Nullable String phone,
            @Nullable String gettingIn,
            boolean toBeRead,
            @Nullable BigDecimal latitude,
            @Nullable BigDecimal longitude) {}

    /** @param kind key, code or alarm */
    public record Code(String kind, String label, String secret) {

        @Override
        public String toString() {
            return "Code[" + kind + " " + label + "]";
        }
    }

    public record Danger(String kind, String note, String language) {}

    /** @param caution code of one of the day's cautions */
    public record TaskLine(
            UUID id,
            @Nullable UUID equipmentId,
            @Nullable String equipment,
            String code,
            Wording wording,
            Wording reason,
            String basis,
            String act,
            @Nullable String ticket,
            boolean mayDoIt,
            int minutes,
            @Nullable String caution,
            List<ReadingLine> readings,
            List<Task.PartUse> parts) {}

    /**
     * What is asked, and within what.
     *
     * @param low lower end of the band for this machine, in the reading's own unit; null when open or not known yet
     * @param last what it was last time
     */
    public record ReadingLine(
            ReadingSpec spec,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            @Nullable Last last) {}

    /** An operation that stands on the sheet already. */
    public record Said(UUID id, String kind, Map<String, Object> body) {}

    /** @param partKind of the catalogue; null for a part of the business's own sort */
    public record VanPart(KnownPart part, @Nullable PartKind partKind, BigDecimal inVan) {}
}
