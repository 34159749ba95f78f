package changeover.web.api;

import changeover.billing.documents.Documents;
import changeover.billing.documents.PaperKind;
import changeover.billing.papers.BusinessPaper;
import changeover.billing.papers.BusinessPapers;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
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
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The business's own papers, the first to end first. */
@Path("/api/v1/{slug}/papers")
@RolesAllowed({"owner", "office"})
public class OwnPapersApi {

    private static final int SIXTY = 60;

    @Inject
    BusinessPapers papers;

    @Inject
    Documents documents;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<BusinessPaper> all() {
        return papers.all();
    }

    /**
     * A paper: {@code kind} (licence, insurance, bond, ticket, other) and {@code name}, for a ticket the {@code person} whose it
     * is, optionally {@code number, expires}, the days before it to be told of it ({@code remindDays}) and {@code pdf}, its file in Base64.
     */
    @POST
    public Response add(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "papers " + body, () -> {
            Asked asked = Asked.of(body, json);
            var facts = new BusinessPapers.Facts(
                    asked.oneOf("kind", Set.copyOf(BusinessPaper.KINDS)),
                    asked.text("name", 120),
                    asked.line("number", 60),
                    asked.idOrNone("person"),
                    asked.dayOrNone("expires"),
                    asked.wholeOr("remindDays", 1, 365, SIXTY));
            byte[] pdf = pdf(asked);
            asked.nothingElse().understood();
            UUID id = papers.add(facts, pdf);
            return Once.Answer.made("/api/v1/" + slug + "/papers/" + id, known(id));
        });
    }

    private static byte[] pdf(Asked asked) {
        @Nullable String text = asked.line("pdf", BusinessPapers.LARGEST * 4 / 3 + 4);
        try {
            return text == null ? new byte[0] : Base64.getDecoder().decode(text);
        } catch (IllegalArgumentException notBase64) {
            asked.refuse(Refusal.of("paper.not-a-pdf").at("pdf"));
            return new byte[0];
        }
    }

    @GET
    @Path("{paper}")
    @Transactional
    public BusinessPaper one(@PathParam("paper") UUID paper) {
        return known(paper);
    }

    @GET
    @Path("{paper}/file.pdf")
    @Produces("application/pdf")
    @Transactional
    public Response file(@PathParam("paper") UUID paper) {
        return documents.newest(PaperKind.PAPER, paper).map(PaperAnswer::of).orElseThrow(NotFoundException::new);
    }

    /** Writes to a {@code customer} with the file attached. */
    @POST
    @Path("{paper}/sending")
    public Response send(@PathParam("paper") UUID paper, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "paper " + paper + body, () -> {
            var _ = known(paper);
            Asked asked = Asked.of(body, json);
            UUID customer = asked.id("customer");
            asked.nothingElse().understood();
            papers.send(paper, customer);
            return Once.Answer.done(known(paper));
        });
    }

    /** It is put away: another one took its place. */
    @POST
    @Path("{paper}/end")
    public Response putAway(@PathParam("paper") UUID paper, @HeaderParam("Operation-Id") String operation) {
        return once.answer(operation, "paper end " + paper, () -> {
            BusinessPaper put = known(paper);
            papers.putAway(paper, today.day());
            return Once.Answer.done(put);
        });
    }

    private BusinessPaper known(UUID paper) {
        return papers.find(paper).orElseThrow(NotFoundException::new);
    }
}
