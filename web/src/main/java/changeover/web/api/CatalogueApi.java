package changeover.web.api;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.Task;
import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the trade knows here: kinds of equipment, tasks with their sources, kinds of parts. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office", "technician"})
public class CatalogueApi {

    /** A kind with what fits it and what its plate gives; the names are those of the homes file. */
    public record KindDocument(String code, Wording wording, List<FactDocument> fits, List<FactDocument> nameplate) {}

    public record FactDocument(
            String name,
            Wording wording,
            String form,
            @Nullable String unit,
            List<String> values,
            @Nullable String part) {}

    /** A task: who may do it, how often, on what basis. */
    public record TaskDocument(
            String code,
            Collection<String> kinds,
            Wording wording,
            String who,
            String ticket,
            int minutes,
            JsonNode cadence,
            JsonNode readings,
            String basis,
            @Nullable String source) {}

    public record PartKindDocument(String code, Wording wording, String unit) {}

    @Inject
    OwnCatalogue catalogue;

    @Inject
    ObjectMapper json;

    @GET
    @Path("kinds")
    @Transactional
    public List<KindDocument> kinds() {
        return catalogue.catalogue().kinds().stream().map(CatalogueApi::kind).toList();
    }

    @GET
    @Path("tasks")
    @Transactional
    public List<TaskDocument> tasks() {
        Catalogue trade = catalogue.catalogue();
        return trade.tasks().stream().map(this::task).toList();
    }

    private static KindDocument kind(Kind kind) {
        return new KindDocument(
                kind.code(),
                kind.wording(),
                kind.fits().stream().map(CatalogueApi::fact).toList(),
                kind.nameplate().stream().map(CatalogueApi::fact).toList());
    }

    private static FactDocument fact(Fact fact) {
        return new FactDocument(
                fact.name(),
                fact.wording(),
                fact.form().name().toLowerCase(java.util.Locale.ROOT),
                fact.unit(),
                fact.choices().stream().map(Fact.Choice::value).toList(),
                fact.part());
    }

    private TaskDocument task(Task task) {
        return new TaskDocument(
                task.code(),
                task.kinds(),
                task.wording(),
                task.who().code(),
                task.ticket().code(),
                task.minutes(),
                json.valueToTree(task.cadence()),
                json.valueToTree(task.readings()),
                task.basis(),
                task.source());
    }
}
