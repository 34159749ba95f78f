package changeover.web.office;

import changeover.billing.bank.BankFiles;
import changeover.billing.bank.BankTable;
import changeover.billing.bank.Banks;
import changeover.billing.bank.Columns;
import changeover.billing.bank.ColumnsGuess;
import changeover.billing.bank.DayStyle;
import changeover.billing.bank.OfxFile;
import changeover.billing.bank.ReadLine;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;

/** A bank's file: looked at first, three rows as they stand and as they are read; kept when a person says so. */
@Path("/{slug}/money/bank/files/{bank}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class BankFilePages {

    private static final int ROWS = 3;

    public record Read(String day, String words, String reference, String amount) {}

    /** What was seen of a file before anything was kept. */
    public record Seen(boolean guessed, List<List<String>> rows, List<Read> read, int count) {}

    public record View(
            UUID id,
            String name,
            List<DayStyle> styles,
            @Nullable Seen seen) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance bankfile(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Banks banks;

    @Inject
    BankFiles files;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance page(@PathParam("bank") UUID bank) {
        return page(bank, null, ColumnsForm.said(found(bank).columns()));
    }

    /** @param what look (or nothing), or keep */
    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response bring(
            @PathParam("slug") String slug,
            @PathParam("bank") UUID bank,
            @RestForm("file") @Nullable FileUpload file,
            @RestForm("what") @Nullable String what,
            @RestForm("separator") @Nullable String separator,
            @RestForm("headRows") @Nullable String headRows,
            @RestForm("dayColumn") @Nullable String dayColumn,
            @RestForm("dayStyle") @Nullable String dayStyle,
            @RestForm("amountColumn") @Nullable String amountColumn,
            @RestForm("outColumn") @Nullable String outColumn,
            @RestForm("decimalComma") @Nullable String decimalComma,
            @RestForm("wordsColumns") @Nullable String wordsColumns,
            @RestForm("referenceColumn") @Nullable String referenceColumn,
            @RestForm("kindColumn") @Nullable String kindColumn) {
        byte[] bytes = Uploaded.bytes(file);
        var form = new ColumnsForm(
                separator,
                headRows,
                dayColumn,
                dayStyle,
                amountColumn,
                outColumn,
                decimalComma,
                wordsColumns,
                referenceColumn,
                kindColumn);
        Typed typed = form.typed();
        Function<List<Refusal>, TemplateInstance> again =
                refusals -> page(bank, null, Said.again(typed, refusals, frames.locale()));
        if (!"keep".equals(what)) {
            return desk.look(
                    () -> {
                        chosen(bank, bytes);
                        return look(bank, bytes, form, typed);
                    },
                    again);
        }
        return desk.answer(
                () -> {
                    chosen(bank, bytes);
                    if (!OfxFile.isOne(bytes)) {
                        banks.map(bank, form.columns(typed));
                    }
                    BankFiles.Taken taken = files.take(bank, Uploaded.name(file), bytes);
                    return SaidOnce.at("/" + slug + "/money/bank", taken.fresh() == 0 ? "bank-known" : "bank-taken");
                },
                again);
    }

    private void chosen(UUID bank, byte[] bytes) {
        found(bank);
        if (bytes.length == 0) {
            throw Refusal.of("bank.choose").at("file").thrown();
        }
    }

    private TemplateInstance look(UUID bank, byte[] bytes, ColumnsForm form, Typed typed) {
        if (OfxFile.isOne(bytes)) {
            List<ReadLine> lines = files.look(bank, bytes);
            return page(
                    bank,
                    new Seen(false, List.of(), read(lines), lines.size()),
                    ColumnsForm.said(found(bank).columns()));
        }
        boolean guessed = form.isEmpty();
        Columns columns = guessed
                ? ColumnsGuess.of(bytes)
                        .orElseThrow(
                                () -> Refusal.of("bank.no-table").at("file").thrown())
                : form.columns(typed);
        List<List<String>> rows = BankTable.rows(bytes, columns.separator(), columns.headRows() + ROWS);
        List<ReadLine> lines =
                BankTable.read(bytes, columns, businesses.current().currency().getCurrencyCode());
        return page(
                bank,
                new Seen(guessed, rows, read(lines), lines.size()),
                guessed ? ColumnsForm.said(columns) : Said.again(typed, List.of(), frames.locale()));
    }

    private List<Read> read(List<ReadLine> lines) {
        Frame frame = frames.of(Tab.MONEY);
        var currency = businesses.current().currency();
        return lines.stream()
                .limit(ROWS)
                .map(line -> new Read(
                        frame.inWords(line.day()),
                        line.words(),
                        line.reference() == null ? "" : line.reference(),
                        Money.rounded(line.amount(), currency).format(frame.locale())))
                .toList();
    }

    private TemplateInstance page(UUID id, @Nullable Seen seen, Said form) {
        Banks.Bank bank = found(id);
        return Pages.bankfile(
                frames.of(Tab.MONEY), new View(id, bank.name(), Arrays.asList(DayStyle.values()), seen), form);
    }

    private Banks.Bank found(UUID id) {
        return banks.one(id).orElseThrow(NotFoundException::new);
    }
}
