package changeover.web.office;

import changeover.contracts.broughtfiles.BroughtFiles;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.words.Refusal;
import changeover.scheduling.visits.LastTimes;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Uploaded;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;

/** The take-over day: which it is, several lists brought at once after a look, and what is still to be read on machines. */
@Path("/{slug}/shop/take-over")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class TakeOverPages {

    /** As many machines to be read stand on the page. */
    private static final int UNREAD = 50;

    /** The longest reading of a machine, in minutes. */
    private static final int LONGEST = 120;

    /** A list that may be brought. */
    public record Known(String code, String titles) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance takeover(
                Frame frame,
                List<Known> lists,
                @Nullable BroughtLook look,
                List<LastTimes.Unread> unread,
                int count,
                Said day,
                Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    TakeOver takeOver;

    @Inject
    BroughtFiles files;

    @Inject
    LastTimes times;

    @GET
    @Transactional
    public TemplateInstance page() {
        return page(null, day(), Said.blank());
    }

    @POST
    public Response keep(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    LocalDate day = typed.day("takeOver");
                    int minutes = typed.whole("minutes", 0, LONGEST);
                    typed.understood();
                    takeOver.on(day);
                    takeOver.readIn(minutes);
                    return SaidOnce.at("/" + slug + "/shop/take-over", "kept");
                },
                refusals -> page(null, Said.again(typed, refusals, frames.locale()), Said.blank()));
    }

    /** @param what look, or write on a yes to what was seen */
    @POST
    @Path("files")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response bring(
            @RestForm("file") @Nullable List<FileUpload> chosen,
            @RestForm("carriedName") @Nullable List<String> names,
            @RestForm("carried") @Nullable List<String> carried,
            @RestForm("seen") @Nullable String seen,
            @RestForm("what") @Nullable String what) {
        List<BroughtFiles.Named> uploaded = uploaded(chosen);
        Callable<TemplateInstance> deed = () -> {
            List<BroughtFiles.Named> all = uploaded.isEmpty() ? opened(names, carried) : uploaded;
            if (all.isEmpty()) {
                throw Refusal.of("brought.file").at("file").thrown();
            }
            LocalDate day = takeOver.dayOrToday();
            BroughtFiles.Looked looked = files.look(all, day);
            boolean yes = "write".equals(what);
            boolean write = yes && looked.seen().equals(seen);
            BroughtFiles.Looked done = write ? files.bring(all, day) : looked;
            return page(
                    BroughtLook.of(done, looked.seen(), write ? List.of() : all, files.lists(), frames.locale()),
                    day(),
                    yes && !write ? refused(List.of(Refusal.of("brought.changed"))) : Said.blank());
        };
        Function<List<Refusal>, TemplateInstance> again = refusals -> page(null, day(), refused(refusals));
        return "write".equals(what) ? desk.show(deed, again) : desk.look(deed, again);
    }

    private Said refused(List<Refusal> refusals) {
        return Said.again(new Typed(new MultivaluedHashMap<>()), refusals, frames.locale());
    }

    private static List<BroughtFiles.Named> uploaded(@Nullable List<FileUpload> chosen) {
        List<BroughtFiles.Named> all = new ArrayList<>();
        for (FileUpload one : chosen == null ? List.<FileUpload>of() : chosen) {
            byte[] bytes = Uploaded.bytes(one);
            if (bytes.length > 0) {
                all.add(new BroughtFiles.Named(Uploaded.name(one), bytes));
            }
        }
        return all;
    }

    private static List<BroughtFiles.Named> opened(@Nullable List<String> names, @Nullable List<String> carried) {
        List<BroughtFiles.Named> all = new ArrayList<>();
        if (names != null && carried != null) {
            for (int at = 0; at < Math.min(names.size(), carried.size()); at++) {
                all.add(new BroughtFiles.Named(names.get(at), CarriedFile.open(carried.get(at))));
            }
        }
        return all;
    }

    private Said day() {
        return Said.filled(Map.of(
                "takeOver", takeOver.dayOrToday().toString(), "minutes", String.valueOf(takeOver.readingMinutes())));
    }

    private TemplateInstance page(@Nullable BroughtLook look, Said day, Said form) {
        Frame frame = frames.of(Tab.SHOP);
        List<LastTimes.Unread> unread = times.unread();
        boolean french = frame.locale().getLanguage().equals("fr");
        return Pages.takeover(
                frame,
                files.lists().stream()
                        .map(list -> new Known(list.code(), BroughtFiles.line(list, french)))
                        .toList(),
                look,
                unread.stream().limit(UNREAD).toList(),
                unread.size(),
                day,
                form);
    }
}
