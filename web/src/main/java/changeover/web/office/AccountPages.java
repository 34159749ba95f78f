package changeover.web.office;

import changeover.billing.ledger.AccountCodes;
import changeover.billing.ledger.AccountNames;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
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
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The accountant's codes for what the journal moves. */
@Path("/{slug}/money/accounts")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class AccountPages {

    /** A role's field; {@code name} is the field's name in the form. */
    public record Role(String name, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance accounts(Frame frame, List<Role> roles, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    AccountCodes codes;

    @Inject
    AccountNames names;

    @GET
    @Transactional
    public TemplateInstance accounts() {
        Map<String, String> fields = new LinkedHashMap<>();
        codes.all().forEach((role, code) -> fields.put(field(role), code));
        return page(Said.filled(fields));
    }

    @POST
    public Response keep(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Map<String, String> set = new LinkedHashMap<>();
                    for (String role : codes.roles()) {
                        if (fields.containsKey(field(role))) {
                            @Nullable String code = typed.line(field(role), AccountCodes.LONGEST);
                            set.put(role, code == null ? "" : code);
                        }
                    }
                    typed.understood();
                    codes.set(set);
                    return SaidOnce.at("/" + slug + "/money/accounts", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.MONEY);
        AccountNames.Names said = names.now();
        List<Role> roles = codes.roles().stream()
                .map(role -> new Role(field(role), said.of(role).in(frame.locale())))
                .toList();
        return Pages.accounts(frame, roles, form);
    }

    private static String field(String role) {
        return "code-" + role.replace(' ', '-');
    }
}
