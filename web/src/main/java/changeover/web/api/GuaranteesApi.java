package changeover.web.api;

import changeover.billing.warranties.Guarantee;
import changeover.billing.warranties.Guarantees;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** For how many months we, the makers of parts and the law answer. */
@Path("/api/v1/{slug}/guarantees")
@RolesAllowed({"owner", "office"})
public class GuaranteesApi {

    private static final int MOST = 480;

    /** By whose word: our own by kind of work, makers' by part, the law's by place and kind of machine. */
    public record GuaranteesDocument(List<Guarantee> ours, List<Guarantee> parts, List<Guarantee> law) {}

    @Inject
    Guarantees guarantees;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public GuaranteesDocument all() {
        return document();
    }

    /**
     * So many {@code months} from a day on: {@code whose} (ours, part, law), {@code of} (maintenance or repair; a part's code; a
     * place), {@code from, months}, of a part and of the law the {@code source}, of the law optionally the {@code kind}.
     */
    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "guarantees " + body, () -> {
            Asked asked = Asked.of(body, json);
            String whose = asked.oneOf("whose", Set.of("ours", "part", "law"));
            String of = whose.equals("ours") ? asked.oneOf("of", Guarantees.WORKS) : asked.text("of", 60);
            LocalDate from = asked.day("from");
            int months = asked.whole("months", 0, MOST);
            String source = whose.equals("ours") ? "" : asked.text("source", 300);
            String kind = whose.equals("law") ? Objects.requireNonNullElse(asked.line("kind", 60), "") : "";
            asked.nothingElse().understood();
            switch (whose) {
                case "ours" -> guarantees.ours(of, from, months);
                case "part" -> guarantees.part(of, from, months, source);
                default -> guarantees.law(of, kind, from, months, source);
            }
            return Once.Answer.made("/api/v1/" + slug + "/guarantees", document());
        });
    }

    private GuaranteesDocument document() {
        return new GuaranteesDocument(guarantees.ours(), guarantees.ofParts(), guarantees.ofLaw());
    }
}
