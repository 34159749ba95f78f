package changeover.web.api;

import changeover.contracts.calendar.Changeover;
import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The business's seasons: those that it began with, by its place, moved or not, and its own. */
@Path("/api/v1/{slug}/seasons")
@RolesAllowed({"owner", "office", "technician"})
public class SeasonsApi {

    /**
     * A season as the API says it.
     *
     * @param first the first day of each year in it, {@code --04-01} as ISO 8601 writes a day without a year
     * @param last the last day in it; before {@code first} when it crosses the new year
     * @param changeover heating, cooling, or null
     * @param shipped the days it was shipped with; null for a season of the business's own
     * @param basis what the business's own days rest on; null while they stand as shipped
     * @param opens the first day of the one that is open, else of the next
     */
    public record SeasonDocument(
            UUID id,
            String code,
            Wording name,
            String first,
            String last,
            @Nullable String changeover,
            @Nullable Days shipped,
            @Nullable String basis,
            LocalDate opens,
            LocalDate closes,
            int version) {}

    /** @param source where the warm months of the place come from; null for the other seasons */
    public record Days(String first, String last, @Nullable String source) {}

    @Inject
    Seasons seasons;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<SeasonDocument> all() {
        return seasons.all().stream().map(this::document).toList();
    }

    @GET
    @Path("{id}")
    @Transactional
    public Response one(@PathParam("id") UUID id) {
        OwnSeason season = seasons.find(id).orElseThrow(NotFoundException::new);
        return Edition.of(document(season), season.version());
    }

    /** A season of the business's own: {@code code, nameEn, nameFr, first, last, basis}, optionally {@code changeover}. */
    @POST
    @RolesAllowed("owner")
    public Response add(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "seasons " + body, () -> {
            Asked asked = Asked.of(body, json);
            String code = asked.text("code", 40);
            OwnSeason.Facts facts = facts(asked);
            asked.nothingElse().understood();
            OwnSeason season = seasons.add(code, facts);
            return Once.Answer.made("/api/v1/" + slug + "/seasons/" + season.id(), document(season));
        });
    }

    /** Moves a season's days on the edition that If-Match names; its code stays, since promises name it. */
    @PUT
    @Path("{id}")
    @RolesAllowed("owner")
    public Response rewrite(
            @PathParam("id") UUID id,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "seasons " + id + " " + ifMatch + body, () -> {
            var _ = seasons.find(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            OwnSeason.Facts facts = facts(asked);
            asked.nothingElse().understood();
            return Once.Answer.done(document(
                    seasons.rewrite(id, facts, Edition.filledOn(ifMatch)).orElseThrow()));
        });
    }

    private static OwnSeason.Facts facts(Asked asked) {
        String en = asked.text("nameEn", 120);
        String fr = asked.text("nameFr", 120);
        MonthDay first = day("first", asked);
        MonthDay last = day("last", asked);
        return new OwnSeason.Facts(
                en,
                fr,
                first.getMonthValue(),
                first.getDayOfMonth(),
                last.getMonthValue(),
                last.getDayOfMonth(),
                asked.value("changeover") == null ? null : asked.oneOf("changeover", Set.of("heating", "cooling")),
                asked.line("basis", 200));
    }

    private static MonthDay day(String member, Asked asked) {
        String text = asked.text(member, 20);
        try {
            return text.isEmpty() ? MonthDay.of(1, 1) : MonthDay.parse(text.startsWith("--") ? text : "--" + text);
        } catch (DateTimeException noSuchDay) {
            asked.refuse(Refusal.of("typed.month-day").at(member));
            return MonthDay.of(1, 1);
        }
    }

    private SeasonDocument document(OwnSeason own) {
        Season season = own.season();
        Changeover changeover = season.changeover();
        var opening = season.openingAt(today.day());
        return new SeasonDocument(
                own.id(),
                season.code(),
                new Wording(season.nameEn(), season.nameFr()),
                season.first().toString(),
                season.last().toString(),
                changeover == null ? null : changeover.code(),
                seasons.shipped()
                        .find(season.code())
                        .map(shipped -> new Days(
                                shipped.first().toString(),
                                shipped.last().toString(),
                                season.code().equals(Climate.WARM)
                                        ? seasons.warmMonths().source()
                                        : null))
                        .orElse(null),
                own.basis().orElse(null),
                opening.from(),
                opening.last(),
                own.version());
    }
}
