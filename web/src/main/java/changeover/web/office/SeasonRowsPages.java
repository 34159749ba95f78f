package changeover.web.office;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.OutdoorMonths;
import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The business's seasons: moved by its climate, with what the new days rest on, and seasons of its own. */
@Path("/{slug}/shop/seasons")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class SeasonRowsPages {

    /** @param shipped the days it was shipped with, in words, when they were moved; else empty */
    public record Row(
            UUID id, String en, String fr, String first, String last, String basis, String shipped, String until) {}

    /** The season whose form is open; empty ids for a new one. */
    public record Open(String id, String name, int version) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance seasonrows(Frame frame, List<Row> rows, Open open, Said form);

        private Pages() {}
    }

    private static final Open NONE = new Open("", "", 0);

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Seasons seasons;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(NONE, Said.blank());
    }

    @GET
    @Path("{season}")
    @Transactional
    public TemplateInstance one(@PathParam("season") UUID id) {
        OwnSeason season = known(id);
        return page(open(season), Said.filled(fields(season.facts())));
    }

    @POST
    @RolesAllowed("owner")
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    String code = typed.text("code", 40);
                    OwnSeason.Facts facts = facts(typed);
                    typed.understood();
                    seasons.add(code, facts);
                    return SaidOnce.at("/" + slug + "/shop/seasons", "kept");
                },
                refusals -> page(NONE, Said.again(typed, refusals, frames.locale())));
    }

    @POST
    @Path("{season}")
    @RolesAllowed("owner")
    public Response rewrite(
            @PathParam("slug") String slug, @PathParam("season") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        int version = typed.whole("version", 0, Integer.MAX_VALUE);
        return desk.answer(
                () -> {
                    known(id);
                    OwnSeason.Facts facts = facts(typed);
                    typed.understood();
                    seasons.rewrite(id, facts, new FilledOn(version));
                    return SaidOnce.at("/" + slug + "/shop/seasons", "kept");
                },
                refusals -> page(open(known(id)), Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Open open, Said form) {
        Frame frame = frames.of(Tab.SHOP);
        Climate shipped = seasons.shipped();
        OutdoorMonths warm = seasons.warmMonths();
        List<Row> rows = seasons.all().stream()
                .map(own -> row(own, shipped, warm, frame))
                .toList();
        return Pages.seasonrows(frame, rows, open, form);
    }

    private static Row row(OwnSeason own, Climate climate, OutdoorMonths warm, Frame frame) {
        Season season = own.season();
        @Nullable
        Season shipped = climate.find(season.code())
                .filter(one ->
                        !one.first().equals(season.first()) || !one.last().equals(season.last()))
                .orElse(null);
        return new Row(
                own.id(),
                season.nameEn(),
                season.nameFr(),
                words(season.first(), frame),
                words(season.last(), frame),
                own.basis().orElse(shipped == null && season.code().equals(Climate.WARM) ? restsOn(warm, frame) : ""),
                shipped == null ? "" : words(shipped.first(), frame),
                shipped == null ? "" : words(shipped.last(), frame));
    }

    private static String restsOn(OutdoorMonths warm, Frame frame) {
        return warm.basis().in(frame.locale());
    }

    private static String words(MonthDay day, Frame frame) {
        return DayInWords.of(day).in(frame.locale());
    }

    private Open open(OwnSeason season) {
        return new Open(season.id().toString(), season.season().name(frames.locale()), season.version());
    }

    private static OwnSeason.Facts facts(Typed typed) {
        MonthDay first = day("first", typed);
        MonthDay last = day("last", typed);
        String changeover = typed.oneOf("changeover", Set.of("none", "heating", "cooling"));
        return new OwnSeason.Facts(
                typed.text("nameEn", 120),
                typed.text("nameFr", 120),
                first.getMonthValue(),
                first.getDayOfMonth(),
                last.getMonthValue(),
                last.getDayOfMonth(),
                changeover.equals("none") ? null : changeover,
                typed.line("basis", 200));
    }

    private static MonthDay day(String field, Typed typed) {
        String text = typed.text(field, 10);
        try {
            return text.isEmpty() ? MonthDay.of(1, 1) : MonthDay.parse("--" + text);
        } catch (DateTimeException noSuchDay) {
            typed.refuse(Refusal.of("typed.month-day").at(field));
            return MonthDay.of(1, 1);
        }
    }

    private static Map<String, String> fields(OwnSeason.Facts facts) {
        var fields = new LinkedHashMap<String, String>();
        fields.put("nameEn", facts.nameEn());
        fields.put("nameFr", facts.nameFr());
        fields.put(
                "first",
                MonthDay.of(facts.fromMonth(), facts.fromDay()).toString().substring(2));
        fields.put(
                "last",
                MonthDay.of(facts.lastMonth(), facts.lastDay()).toString().substring(2));
        String changeover = facts.changeover();
        String basis = facts.basis();
        fields.put("changeover", changeover == null ? "none" : changeover);
        fields.put("basis", basis == null ? "" : basis);
        return fields;
    }

    private OwnSeason known(UUID id) {
        return seasons.find(id).orElseThrow(NotFoundException::new);
    }
}
