package changeover.web.api;

import changeover.scheduling.closeout.Photos;
import changeover.web.session.Once;
import changeover.web.session.OwnVisits;
import changeover.web.session.PaperAnswer;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.Base64;
import java.util.Map;
import java.util.UUID;

/** A photo's bytes come in by themselves; an operation of kind {@code photo} then says what they show. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office", "technician"})
public class PhotosApi {

    @Inject
    Photos photos;

    @Inject
    OwnVisits visits;

    @Inject
    Once once;

    /** A JPEG or PNG of at most 20 MB; answers the {@code sha256} that an operation names it by. */
    @POST
    @Path("photos")
    @Consumes({"image/jpeg", "image/png"})
    public Response take(@HeaderParam("Operation-Id") String operation, byte[] bytes) {
        return once.answer(
                operation,
                "photo " + Base64.getEncoder().encodeToString(bytes),
                () -> Once.Answer.done(Map.of("sha256", photos.store(bytes, null))));
    }

    /** A photo of the visit as it is kept. */
    @GET
    @Path("visits/{id}/photos/{sha256}")
    @Produces("image/jpeg")
    @Transactional
    public Response picture(@PathParam("id") UUID id, @PathParam("sha256") String sha256) {
        return PaperAnswer.of(photos.ofVisit(visits.found(id).id(), sha256).orElseThrow(NotFoundException::new));
    }
}
