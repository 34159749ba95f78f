package changeover.web.api;

import changeover.contracts.pictures.Picture;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.partners.GivenVisit;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.partners.PartnerReports;
import changeover.scheduling.partnerwork.PartnerWork;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Once;
import changeover.web.session.PaperAnswer;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Base64;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A visit given to a licensed partner: with whom it is, their report, taken back, or closed as made by them. */
@Path("/api/v1/{slug}/visits/{id}/partner")
@RolesAllowed({"owner", "office"})
public class VisitPartnerApi {

    /**
     * With whom a visit is.
     *
     * @param partner null while it is with nobody
     * @param price what they ask of us, before taxes
     * @param made whether it was closed as made by them
     */
    public record Document(
            UUID visit,
            @Nullable UUID partner,
            @Nullable String name,
            @Nullable LocalDate day,
            @Nullable Amount price,
            @Nullable String note,
            boolean made,
            boolean report) {}

    @Inject
    VisitLists lists;

    @Inject
    GivenVisits given;

    @Inject
    PartnerReports reports;

    @Inject
    PartnerWork work;

    @Inject
    Businesses businesses;

    @Inject
    CurrentTenant current;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public Document with(@PathParam("id") UUID id) {
        known(id);
        return document(id);
    }

    /**
     * Gives it to a partner: {@code partner, day, price}, optionally {@code note}; with {@code askedBy} (customer or us) and
     * {@code why} where the customer was told an hour of ours.
     */
    @POST
    public Response give(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "visit partner " + id + body, () -> {
            known(id);
            Asked asked = Asked.of(body, json);
            var deal = new GivenVisits.Deal(
                    asked.id("partner"),
                    asked.day("day"),
                    asked.money("price", businesses.current().currency()),
                    asked.line("note", 2000));
            @Nullable Moving moving = HourDocuments.moving(asked);
            asked.nothingElse().understood();
            given.give(id, deal, moving);
            return Once.Answer.done(document(id));
        });
    }

    /** It is ours again, and {@code why}. */
    @POST
    @Path("return")
    public Response takeBack(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "visit partner return " + id + body, () -> {
            known(id);
            Asked asked = Asked.of(body, json);
            String why = asked.text("why", 500);
            asked.nothingElse().understood();
            given.takeBack(id, why);
            return Once.Answer.done(document(id));
        });
    }

    /**
     * Closes it as made by the partner on a {@code day}: {@code minutes}, {@code notDone} (a list of lines of the checklist, with
     * {@code notDoneWhy}), {@code note} for the household, {@code receivedBy} or {@code nobodyWhy}. With readings, findings or parts
     * it is closed by {@code visits/{id}/closure} instead, which names the partner too.
     */
    @POST
    @Path("closure")
    public Response close(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "visit partner closure " + id + body, () -> {
            known(id);
            Asked asked = Asked.of(body, json);
            var said = new PartnerWork.Said(
                    asked.day("day"),
                    asked.wholeOr("minutes", 0, 1440, 0),
                    Set.copyOf(AskedTexts.ids(asked, "notDone")),
                    asked.line("notDoneWhy", 500),
                    asked.line("note", 2000),
                    asked.line("receivedBy", 200),
                    asked.line("nobodyWhy", 500));
            asked.nothingElse().understood();
            work.close(id, said, Once.named(operation), current.person());
            return Once.Answer.done(document(id));
        });
    }

    /** Keeps their report: {@code file}, a PDF or a picture in Base64. */
    @POST
    @Path("report")
    public Response keepReport(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "visit partner report " + id + body, () -> {
            known(id);
            Asked asked = Asked.of(body, json);
            byte[] file = file(asked);
            asked.nothingElse().understood();
            reports.keep(id, file);
            return Once.Answer.done(document(id));
        });
    }

    private static byte[] file(Asked asked) {
        String text = asked.text("file", PartnerReports.LARGEST * 4 / 3 + 4);
        try {
            return Base64.getDecoder().decode(text);
        } catch (IllegalArgumentException notBase64) {
            asked.refuse(Refusal.of("partner.no-report").at("file"));
            return new byte[0];
        }
    }

    @GET
    @Path("report")
    @Transactional
    public Response report(@PathParam("id") UUID id) {
        known(id);
        PartnerReports.Kept kept = reports.newest(id).orElseThrow(NotFoundException::new);
        return kept.isPdf()
                ? PaperAnswer.of(kept.bytes(), "partner-report.pdf")
                : PaperAnswer.of(Picture.kept(kept.bytes()));
    }

    private void known(UUID id) {
        if (lists.one(id).isEmpty()) {
            throw new NotFoundException();
        }
    }

    private Document document(UUID id) {
        GivenVisit with = given.of(id).orElse(null);
        return with == null
                ? new Document(id, null, null, null, null, null, false, false)
                : new Document(
                        id,
                        with.partner(),
                        with.partnerName(),
                        with.day(),
                        Amount.of(with.price()),
                        with.note(),
                        with.done(),
                        with.report());
    }
}
