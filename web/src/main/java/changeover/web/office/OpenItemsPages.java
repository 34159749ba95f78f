package changeover.web.office;

import changeover.billing.payments.Age;
import changeover.billing.payments.OpenByAge;
import changeover.billing.payments.OpenedBefore;
import changeover.billing.payments.Owed;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The open documents behind an age of what is owed, at the end of any day. */
@Path("/{slug}/money/earned")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class OpenItemsPages {

    public record Item(UUID id, String label, UUID customerId, String customer, String due, String open) {}

    /** A debt from before the take-over, which is no document. */
    public record Old(String since, UUID customerId, String customer, String words, String open) {}

    public record Items(String age, String day, String asked, List<Item> rows, Leaf leaf, List<Old> old, String sum) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance openitems(Frame frame, Items list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Owed owed;

    @Inject
    OpenByAge open;

    @Inject
    OpenedBefore before;

    @GET
    @Path("open")
    @Transactional
    public TemplateInstance open(@Context UriInfo asked, @Nullable @QueryParam("age") String age) {
        var typed = new Typed(asked.getQueryParameters());
        @Nullable LocalDate said = typed.dayOrNone("day");
        typed.understood();
        LocalDate day = said == null ? today.day() : said;
        @Nullable Age chosen = age == null ? null : Age.of(age).orElseThrow(NotFoundException::new);
        Frame frame = frames.of(Tab.MONEY);
        List<OpenByAge.Item> items = open.on(day, chosen);
        List<OpenedBefore.Item> old = before.on(day, chosen);
        Money sum = Money.sum(
                Stream.concat(
                                items.stream().map(OpenByAge.Item::open),
                                old.stream().map(OpenedBefore.Item::open))
                        .toList(),
                owed.all(day).open().currency());
        Leaf leaf = Leaf.of(asked, items.size());
        return Pages.openitems(
                frame,
                new Items(
                        age == null ? "" : age,
                        frame.inWords(day),
                        day.toString(),
                        leaf.shown(items).stream()
                                .map(one -> EarnedRows.item(one, frame))
                                .toList(),
                        leaf,
                        old.stream().map(one -> EarnedRows.old(one, frame)).toList(),
                        EarnedPages.said(sum, frame)));
    }
}
