package changeover.web.office;

import changeover.billing.notices.OfferMail;
import changeover.contracts.agreements.AgreementLists;
import changeover.contracts.agreements.AgreementRow;
import changeover.contracts.agreements.AgreementState;
import changeover.contracts.agreements.RenewalRow;
import changeover.contracts.agreements.Renewals;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusals;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Agreements by where they stand, and the terms that end soon. */
@Path("/{slug}/agreements")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class AgreementPages {

    private static final int SHOWN = 100;

    /** An agreement as a row, in words. */
    public record Row(
            UUID id, int number, UUID homeId, String home, String customer, String plan, String term, String price) {}

    /** A term that ends soon. */
    public record Renewal(
            UUID id,
            UUID homeId,
            String home,
            String customer,
            String plan,
            String price,
            String by,
            String last,
            String standing,
            UUID offer) {}

    /** The page in one piece. */
    public record View(
            List<Renewal> renewals, List<Row> offered, List<Row> accepted, List<Row> inForce, List<Row> over) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance agreements(Frame frame, View view, List<String> refused);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    AgreementLists lists;

    @Inject
    Renewals renewals;

    @Inject
    OfferMail mail;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page(List.of());
    }

    /** Offers the next year to everybody whose notice is due and who was not offered it yet. */
    @POST
    @Path("renewals")
    public Response offerAll(@PathParam("slug") String slug) {
        return desk.answer(
                () -> {
                    LocalDate now = today.day();
                    List<UUID> due = renewals.list(now).stream()
                            .filter(row -> row.standing() != RenewalRow.Standing.OFFERED)
                            .map(RenewalRow::agreementId)
                            .toList();
                    mail.write(renewals.offerAll(due, now));
                    return SaidOnce.at("/" + slug + "/agreements", "offered");
                },
                refusals -> page(refusals.stream()
                        .map(refusal -> Refusals.sentence(refusal, frames.locale()))
                        .toList()));
    }

    private TemplateInstance page(List<String> refused) {
        Frame frame = frames.of(Tab.AGREEMENTS);
        var over = new java.util.ArrayList<Row>();
        for (AgreementState state : List.of(AgreementState.ENDED, AgreementState.OVER, AgreementState.LAPSED)) {
            over.addAll(rows(state, frame));
        }
        return Pages.agreements(
                frame,
                new View(
                        renewals.list(frame.today()).stream()
                                .map(row -> renewal(row, frame))
                                .toList(),
                        rows(AgreementState.OFFERED, frame),
                        rows(AgreementState.ACCEPTED, frame),
                        rows(AgreementState.IN_FORCE, frame),
                        over),
                refused);
    }

    private List<Row> rows(AgreementState state, Frame frame) {
        return lists.page(state, frame.today(), 0, SHOWN).stream()
                .map(row -> row(row, frame))
                .toList();
    }

    private static Row row(AgreementRow row, Frame frame) {
        return new Row(
                row.agreementId(),
                row.number(),
                row.homeId(),
                row.home(),
                row.signer(),
                row.plan().in(frame.locale()),
                frame.brief(row.term().from()) + " – " + frame.brief(row.term().last()),
                row.price().format(frame.locale()));
    }

    private static Renewal renewal(RenewalRow row, Frame frame) {
        UUID offer = row.renewalId();
        return new Renewal(
                row.agreementId(),
                row.homeId(),
                row.home(),
                row.signer(),
                row.plan().in(frame.locale()),
                row.price().format(frame.locale()),
                frame.brief(row.notice().latest()),
                frame.brief(row.lastDay()),
                row.standing().name(),
                offer == null ? row.agreementId() : offer);
    }
}
