package changeover.web.office;

import changeover.billing.notices.LettersToPrint;
import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMail;
import changeover.billing.notices.OutboxMessage;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
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
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** What waits to go out, what went, and the letters for those without a mail address. */
@Path("/{slug}/shop/mail")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class MailPages {

    public record Row(UUID id, String to, String language, String subject, String standing, String why) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance mail(Frame frame, boolean server, List<UUID> letters, List<Row> rows);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Outbox outbox;

    @Inject
    OutboxMail mail;

    @Inject
    LettersToPrint letters;

    @GET
    @Transactional
    public TemplateInstance list() {
        return page();
    }

    /** The letters not printed yet, as one PDF. */
    @GET
    @Path("letters.pdf")
    @Produces("application/pdf")
    @Transactional
    public Response print() {
        return PaperAnswer.of(
                letters.batch().orElseThrow(NotFoundException::new).pdf(), "letters.pdf");
    }

    /** These came out of the printer, and no letter written since: each is stamped with the day and the person. */
    @POST
    @Path("printed")
    public Response printed(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        Set<String> letters = Set.copyOf(new Typed(fields).each("letter"));
        return desk.answer(
                () -> {
                    outbox.printed(outbox.toPrint().stream()
                            .map(OutboxMessage::id)
                            .filter(id -> letters.contains(id.toString()))
                            .toList());
                    return SaidOnce.at("/" + slug + "/shop/mail", "kept");
                },
                refusals -> page());
    }

    /** Mail that failed goes at the next round, whatever its turn would be. */
    @POST
    @Path("{message}/attempt")
    public Response tryAgain(@PathParam("slug") String slug, @PathParam("message") UUID id) {
        return desk.answer(
                () -> {
                    if (outbox.tryAgain(List.of(id)) == 0) {
                        throw new NotFoundException();
                    }
                    return SaidOnce.at("/" + slug + "/shop/mail", "kept");
                },
                refusals -> page());
    }

    private TemplateInstance page() {
        Frame frame = frames.of(Tab.SHOP);
        List<Row> rows = outbox.newest(0, 100).stream().map(MailPages::row).toList();
        List<UUID> letters = outbox.toPrint().stream()
                .filter(message -> message.missing() == 0)
                .map(OutboxMessage::id)
                .toList();
        return Pages.mail(frame, mail.hasServer(), letters, rows);
    }

    private static Row row(OutboxMessage message) {
        return new Row(
                message.id(),
                message.toName(),
                message.language(),
                message.subject(),
                message.standing().name(),
                message.lastError() == null ? "" : message.lastError());
    }
}
