package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.UnitOfMeasure;
import changeover.scheduling.reviews.Spread;
import changeover.scheduling.reviews.Spreads;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.ReadingScale;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What each technician's readings and times look like beside the others', by the alphabet, for owner and office only. */
@Path("/{slug}/reviews/spread")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class SpreadPages {

    private static final int USUAL_MONTHS = 6;

    /** @param own the middle of one's own, or empty where these are too few */
    public record Line(String person, int count, String own, int otherCount, String others) {}

    public record Thing(String of, List<Line> lines) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance spread(
                Frame frame, String from, String last, List<Thing> times, List<Thing> readings);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Spreads spreads;

    @Inject
    OwnCatalogue catalogue;

    @GET
    @Transactional
    public TemplateInstance spread(
            @QueryParam("from") @Nullable String from, @QueryParam("last") @Nullable String last) {
        Frame frame = frames.of(Tab.TODAY);
        LocalDate until = or(last, frame.today());
        LocalDate first = or(from, until.minusMonths(USUAL_MONTHS));
        Window days = Window.ofDays(first.isAfter(until) ? until : first, until);
        Catalogue trade = catalogue.catalogue();
        Map<String, ReadingSpec> specs = trade.tasks().stream()
                .flatMap(task -> task.readings().stream())
                .collect(Collectors.toMap(ReadingSpec::code, spec -> spec, (one, _) -> one));
        return Pages.spread(
                frame,
                days.from().toString(),
                days.last().toString(),
                spreads.times(days).stream()
                        .map(one -> new Thing(
                                visits(one.of(), frame.locale()),
                                lines(one, UnitOfMeasure.ONE, UnitOfMeasure.ONE, frame.locale())))
                        .toList(),
                spreads.readings(days).stream()
                        .map(one -> reading(one, trade, specs.get(code(one)), frame.locale()))
                        .sorted(Comparator.comparing(Thing::of))
                        .toList());
    }

    private static LocalDate or(@Nullable String said, LocalDate otherwise) {
        return said == null || said.isBlank() ? otherwise : SaidDay.of(said);
    }

    /** The kind of visit. */
    private static String visits(String of, Locale locale) {
        TripWords words = Bundles.of(TripWords.class, locale);
        return switch (of.substring(of.indexOf('/') + 1)) {
            case "plan" -> words.kind_plan();
            case "call" -> words.kind_call();
            case "return" -> words.kind_return();
            case "extra" -> words.kind_extra();
            default -> words.kind_other();
        };
    }

    private static String code(Spread spread) {
        return spread.of().substring(0, spread.of().indexOf('/'));
    }

    /** In the unit in which a technician is asked for it, not in the one it is kept in. */
    private static Thing reading(Spread spread, Catalogue trade, @Nullable ReadingSpec spec, Locale locale) {
        UnitOfMeasure kept = UnitOfMeasure.find(spread.unit()).orElse(UnitOfMeasure.ONE);
        UnitOfMeasure unit = Optional.ofNullable(spec)
                .map(ReadingSpec::unit)
                .flatMap(UnitOfMeasure::find)
                .filter(kept::convertsTo)
                .orElse(kept);
        String kind = trade.findKind(spread.of().substring(spread.of().indexOf('/') + 1))
                .map(Kind::wording)
                .map(one -> ", " + one.in(locale))
                .orElse("");
        String sign = unit.symbol().in(locale);
        String name = spec == null ? code(spread) : spec.wording().in(locale);
        return new Thing(name + kind + (sign.isEmpty() ? "" : " (" + sign + ")"), lines(spread, kept, unit, locale));
    }

    private static List<Line> lines(Spread spread, UnitOfMeasure kept, UnitOfMeasure unit, Locale locale) {
        return spread.lines().stream()
                .map(line -> new Line(
                        line.person(),
                        line.count(),
                        figure(in(kept, unit, line.own()), locale),
                        line.otherCount(),
                        figure(in(kept, unit, line.others()), locale)))
                .toList();
    }

    private static @Nullable BigDecimal in(UnitOfMeasure kept, UnitOfMeasure unit, @Nullable BigDecimal value) {
        return value == null ? null : kept.convert(value, unit);
    }

    private static String figure(@Nullable BigDecimal value, Locale locale) {
        return value == null
                ? ""
                : ReadingScale.figure(value.setScale(1, RoundingMode.HALF_UP).stripTrailingZeros(), locale);
    }
}
