package changeover.web.office;

import changeover.billing.documents.CardSheet;
import changeover.billing.documents.HouseCardPdf;
import changeover.billing.documents.TagPdf;
import changeover.billing.documents.TagSheet;
import changeover.contracts.customers.AccessCodes;
import changeover.web.session.Desk;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
import changeover.web.session.Said;
import changeover.web.session.Typed;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.UUID;

/** The house card and its tags on paper; codes stand on a card only when the owner said why. */
@Path("/{slug}/homes")
@RolesAllowed({"owner", "office"})
public class HouseCardPapers {

    @Inject
    HouseCards cards;

    @Inject
    CardsOnPaper paper;

    @Inject
    AccessCodes codes;

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    HouseCardPages pages;

    @Context
    UriInfo address;

    @GET
    @Path("{home}/card.pdf")
    @Transactional
    public Response card(@PathParam("slug") String slug, @PathParam("home") UUID home) {
        HouseCard card = cards.of(home, frames.locale()).orElseThrow(NotFoundException::new);
        return PaperAnswer.of(
                HouseCardPdf.bytes(paper.card(card, List.of(), link(slug, home), frames.locale())), "card.pdf");
    }

    /** The card with its codes: the reason is kept with who asked. */
    @POST
    @Path("{home}/card.pdf")
    @RolesAllowed("owner")
    public Response cardWithCodes(
            @PathParam("slug") String slug, @PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        String reason = typed.text("reason", 200);
        return desk.attempt(
                () -> {
                    HouseCard card = cards.of(home, frames.locale()).orElseThrow(NotFoundException::new);
                    typed.understood();
                    CardSheet sheet = paper.card(card, codes.read(home, reason), link(slug, home), frames.locale());
                    return PaperAnswer.of(HouseCardPdf.bytes(sheet), "card.pdf");
                },
                refusals -> pages.page(home, Said.again(typed, refusals, frames.locale())));
    }

    /** Stickers for the machines, ten a page, or one a label. */
    @GET
    @Path("{home}/tags.pdf")
    @Transactional
    public Response tags(@PathParam("slug") String slug, @PathParam("home") UUID home, @QueryParam("on") String shape) {
        HouseCard card = cards.of(home, frames.locale()).orElseThrow(NotFoundException::new);
        TagSheet sheet = paper.tags(card, link(slug, home), frames.locale());
        return PaperAnswer.of("labels".equals(shape) ? TagPdf.labels(sheet) : TagPdf.letter(sheet), "tags.pdf");
    }

    private String link(String slug, UUID home) {
        return address.getBaseUri().resolve("/" + slug + "/homes/" + home).toString();
    }
}
