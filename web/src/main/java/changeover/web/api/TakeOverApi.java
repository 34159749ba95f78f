package changeover.web.api;

import changeover.contracts.broughtfiles.BroughtFiles;
import changeover.contracts.takeover.Brought;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.takeover.Title;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Taking over a running shop over the API: the day, and several lists at once. */
@Path("/api/v1/{slug}/take-over")
@RolesAllowed({"owner", "office"})
public class TakeOverApi {

    /** The longest file, in characters. */
    private static final int LONGEST = 2_000_000;

    private static final int LONGEST_READING = 120;

    /** @param day null while nobody said it */
    public record TakeOverDocument(@Nullable LocalDate day, int readingMinutes, List<ListDocument> lists) {}

    public record ListDocument(String list, List<String> needed, List<String> more) {}

    public record BroughtDocument(boolean dry, int changes, int unchanged, int bad, List<FileDocument> files) {}

    /** @param list null where nobody knows the file, and then why */
    public record FileDocument(
            String name,
            @Nullable String list,
            @Nullable String reason,
            int unchanged,
            List<ChangeDocument> changes,
            List<BadDocument> bad) {}

    public record ChangeDocument(int row, String what, String before, String now) {}

    public record BadDocument(int row, String column, String code, String reason) {}

    @Inject
    TakeOver takeOver;

    @Inject
    BroughtFiles files;

    @Inject
    Businesses businesses;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public TakeOverDocument one() {
        return document();
    }

    /** {@code day}, and optionally {@code readingMinutes}. */
    @POST
    public Response keep(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "take-over " + body, () -> {
            Asked asked = Asked.of(body, json);
            LocalDate day = asked.day("day");
            int minutes = asked.wholeOr("readingMinutes", 0, LONGEST_READING, takeOver.readingMinutes());
            asked.nothingElse().understood();
            takeOver.on(day);
            takeOver.readIn(minutes);
            return Once.Answer.done(document());
        });
    }

    /** {@code files}: of each its {@code name} and its {@code text}, known by its line of titles. Good rows are written, the bad ones said. */
    @POST
    @Path("files")
    public Response bring(
            @QueryParam("dry") @DefaultValue("false") boolean dry,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "take-over/files " + dry + body, () -> {
            Asked asked = Asked.of(body, json);
            List<BroughtFiles.Named> brought = new ArrayList<>();
            for (Asked file : asked.each("files")) {
                String name = file.text("name", 200);
                String text = file.text("text", LONGEST);
                file.nothingElse();
                brought.add(new BroughtFiles.Named(name, text.getBytes(StandardCharsets.UTF_8)));
            }
            asked.nothingElse().understood();
            if (brought.isEmpty()) {
                throw Refusal.of("brought.file").at("files").thrown();
            }
            LocalDate day = takeOver.dayOrToday();
            return Once.Answer.done(document(dry, dry ? files.look(brought, day) : files.bring(brought, day)));
        });
    }

    private TakeOverDocument document() {
        return new TakeOverDocument(
                takeOver.day().orElse(null),
                takeOver.readingMinutes(),
                files.lists().stream()
                        .map(list -> new ListDocument(
                                list.code(),
                                list.titles().stream()
                                        .filter(Title::needed)
                                        .map(Title::en)
                                        .toList(),
                                list.titles().stream()
                                        .filter(title -> !title.needed())
                                        .map(Title::en)
                                        .toList()))
                        .toList());
    }

    private BroughtDocument document(boolean dry, BroughtFiles.Looked looked) {
        Locale locale = businesses.current().locale();
        return new BroughtDocument(
                dry,
                looked.changes(),
                looked.unchanged(),
                looked.bad(),
                looked.files().stream().map(file -> document(file, locale)).toList());
    }

    private static FileDocument document(BroughtFiles.Read file, Locale locale) {
        Brought brought = file.brought();
        Refusal why = file.why();
        return new FileDocument(
                file.name(),
                file.list(),
                why == null ? null : Refusals.sentence(why, locale),
                brought.unchanged(),
                brought.changes().stream()
                        .map(one -> new ChangeDocument(
                                one.row(),
                                one.what().in(locale),
                                one.before().in(locale),
                                one.now().in(locale)))
                        .toList(),
                brought.faults().stream()
                        .map(one -> new BadDocument(
                                one.row(), one.column(), one.why().code(), Refusals.sentence(one.why(), locale)))
                        .toList());
    }
}
