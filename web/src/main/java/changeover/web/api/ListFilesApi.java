package changeover.web.api;

import changeover.web.session.CsvAnswer;
import changeover.web.session.ListFile;
import changeover.web.session.ListFiles;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;

/** The lists of the business over the API, each as the file of its page; {@code exports/homes.csv} stands beside them. */
@Path("/api/v1/{slug}/exports/lists")
@RolesAllowed("owner")
public class ListFilesApi {

    @Inject
    ListFiles files;

    /** @param list customers, agreements, visits and so on, as {@link ListFile} names them */
    @GET
    @Path("{list}")
    @Produces("text/csv")
    @Transactional
    public Response take(@PathParam("list") String list) {
        ListFile asked = ListFile.of(list).orElseThrow(NotFoundException::new);
        return CsvAnswer.of(files.take(asked), asked.code());
    }
}
