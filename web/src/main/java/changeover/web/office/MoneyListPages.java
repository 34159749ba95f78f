package changeover.web.office;

import changeover.web.session.CsvAnswer;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.ListFile;
import changeover.web.session.ListFiles;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** The lists of documents and money as files, for whoever keeps the books. */
@Path("/{slug}/money/lists")
@RolesAllowed("owner")
public class MoneyListPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance moneylists(Frame frame, List<String> lists);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    ListFiles files;

    @GET
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance page() {
        return Pages.moneylists(
                frames.of(Tab.MONEY),
                ListFile.ofMoney().stream().map(ListFile::code).toList());
    }

    @GET
    @Path("{list}")
    @Produces("text/csv")
    @Transactional
    public Response take(@PathParam("list") String list) {
        ListFile asked = ListFile.of(list).filter(ListFile::isMoney).orElseThrow(NotFoundException::new);
        return CsvAnswer.of(files.take(asked), asked.code());
    }
}
