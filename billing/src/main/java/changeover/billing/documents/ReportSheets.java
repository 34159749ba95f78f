package changeover.billing.documents;

import changeover.billing.documents.band.HomeYear;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.tenants.Businesses;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearsOfHomes;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The rows of a closed visit become the sheet of its report, in the language of whoever gets it. */
@ApplicationScoped
public class ReportSheets {

    /** Without a next visit, the household's tasks of so many days are said. */
    private static final int DAYS_AHEAD = 180;

    private static final String CORRECTION = """
            select a.version, a.at, coalesce(m.name, ''), a.why from amendment a
            left join membership m on m.tenant_id = a.tenant_id and m.person_id = a.person_id
            where a.tenant_id = current_tenant() and a.visit_id = ?::uuid and a.version = ?::int
            """;

    @Inject
    AgroalDataSource database;

    @Inject
    Letterheads letterheads;

    @Inject
    Businesses businesses;

    @Inject
    OwnCatalogue catalogues;

    @Inject
    YearsOfHomes years;

    /** Empty when the visit is not closed; inside the business's transaction. */
    public Optional<ReportSheet> of(UUID visit, int version) {
        return ReportHead.of(database, visit).map(head -> sheet(visit, version, head));
    }

    private ReportSheet sheet(UUID visit, int version, ReportHead head) {
        Words words = Words.in(head.language());
        ZoneId zone = businesses.current().zone();
        OwnCatalogue.Own own = catalogues.read();
        Catalogue catalogue = own.catalogue();
        ReportFindings findings = new ReportFindings(catalogue, words);
        List<ReportSheet.Finding> found = findings.of(database, visit);
        ReportWork work = new ReportWork(database, words);
        List<ReportSheet.Done> done = new ArrayList<>();
        List<ReportSheet.NotDone> notDone = new ArrayList<>();
        work.tasks(visit, done, notDone);
        Optional<ReportWork.Next> next = work.next(head.homeId(), head.day());
        LocalDate until = next.map(ReportWork.Next::latest).orElse(head.day().plusDays(DAYS_AHEAD));
        Set<String> householdCodes = new LinkedHashSet<>();
        List<ReportSheet.ByYou> byYou = work.household(head.homeId(), head.day(), until, householdCodes);
        return new ReportSheet(
                head.language(),
                letterheads.current(words),
                head.home(),
                head.customer(),
                head.day(),
                time(head.arrived(), zone),
                time(head.left(), zone),
                head.technician(),
                head.tickets(),
                words.say("visit." + head.kind()) + typed(head, words),
                correction(visit, version, zone),
                new ReportReadings(catalogue, words, findings.numbersByTask()).of(database, visit),
                found,
                done,
                notDone,
                work.parts(visit, catalogue),
                byYou,
                next.map(work::said).orElse(null),
                head.note(),
                new ReportSheet.Received(head.receivedBy(), head.nobodyWhy(), time(head.left(), zone)),
                year(head, own),
                cautions(householdCodes, catalogue, words));
    }

    private static String typed(ReportHead head, Words words) {
        String by = head.typedBy();
        return by == null ? "" : ", " + words.say("report.typed-by", "name", by);
    }

    private @Nullable HomeYear year(ReportHead head, OwnCatalogue.Own own) {
        LocalDate first = head.day().minusMonths(2).withDayOfMonth(1);
        Window twelve = new Window(first, first.plusMonths(12));
        YearOfHome year = years.of(head.homeId(), twelve, head.day());
        if (year.promises().isEmpty()) {
            return null;
        }
        return HomeYears.of(year, own.seasons().climate().seasons(), first, head.day(), head.language());
    }

    private static List<String> cautions(Set<String> householdCodes, Catalogue catalogue, Words words) {
        Set<String> cautions = new LinkedHashSet<>();
        for (String code : householdCodes) {
            catalogue
                    .findTask(code)
                    .flatMap(task -> Optional.ofNullable(task.caution()))
                    .filter(caution -> !caution.equals("chemicals"))
                    .flatMap(catalogue::findCaution)
                    .ifPresent(caution -> cautions.add(caution.wording().in(words.language())));
        }
        return List.copyOf(cautions);
    }

    private ReportSheet.@Nullable Correction correction(UUID visit, int version, ZoneId zone) {
        if (version < 2) {
            return null;
        }
        return new Question(database, CORRECTION)
                .first(
                        row -> new ReportSheet.Correction(
                                row.getInt(1),
                                row.getObject(2, OffsetDateTime.class)
                                        .atZoneSameInstant(zone)
                                        .toLocalDate(),
                                row.getString(3),
                                row.getString(4)),
                        visit,
                        version)
                .orElse(null);
    }

    private static @Nullable LocalTime time(@Nullable Instant at, ZoneId zone) {
        return at == null ? null : at.atZone(zone).toLocalTime().withSecond(0).withNano(0);
    }
}
