package changeover.deploy.demo;

import changeover.billing.bank.BankBooking;
import changeover.billing.bank.BankFiles;
import changeover.billing.bank.BankLine;
import changeover.billing.bank.BankLines;
import changeover.billing.bank.Banks;
import changeover.billing.bank.Columns;
import changeover.billing.bank.DayStyle;
import changeover.billing.bank.Proposal;
import changeover.billing.bank.Proposals;
import changeover.billing.payments.OpenByAge;
import changeover.contracts.Examples;
import changeover.contracts.money.Money;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A bank of the shop and a file of its last days: some lines have their yes, some wait. */
@ApplicationScoped
public class DemoBank {

    private static final String FEE = "-12.00";

    @Inject
    Banks banks;

    @Inject
    BankFiles files;

    @Inject
    BankLines lines;

    @Inject
    Proposals proposals;

    @Inject
    BankBooking booking;

    @Inject
    OpenByAge open;

    /** Inside the shop, on its last day. */
    void bring(Examples.Shop shop, LocalDate today) {
        boolean french = shop.language().equals("fr");
        var columns = new Columns(
                french ? ';' : ',',
                1,
                1,
                french ? DayStyle.DAY_SLASH : DayStyle.YEAR_MONTH_DAY,
                4,
                null,
                french,
                List.of(2),
                3,
                2);
        var bank = banks.named(french ? "Coopérative des Deux Ponts" : "Two Bridges Savings");
        banks.map(bank, columns);
        files.take(
                bank,
                french ? "releve.csv" : "statement.csv",
                file(french, today).getBytes(StandardCharsets.UTF_8));
        for (var line : proposals.waiting(100).entrySet()) {
            if (line.getValue().filter(Proposal::sure).isPresent()) {
                booking.accept(line.getKey().id(), line.getValue().get().shown());
            }
        }
        lines.waiting(100).stream()
                .filter(DemoBank::isFee)
                .forEach(line -> booking.dismiss(line.id(), french ? "Frais du compte" : "Fee of the account"));
    }

    /** Two that name their invoice, one that pays a part of it, one that says nobody's name, and what the account costs. */
    private String file(boolean french, LocalDate today) {
        List<OpenByAge.Item> owed = open.on(today, null);
        var rows = new ArrayList<String>();
        rows.add(french ? "Date;Libellé;Référence;Montant" : "Date,Description,Reference,Amount");
        for (int i = 0; i < Math.min(3, owed.size()); i++) {
            OpenByAge.Item item = owed.get(owed.size() - 1 - i);
            Money amount = i < 2 ? item.open() : item.open().fraction(1, 2);
            rows.add(row(
                    french,
                    today.minusDays(4L - i),
                    (french ? "VIREMENT " : "TRANSFER ") + item.customer().toUpperCase(Locale.ROOT),
                    item.label(),
                    amount.decimal()));
        }
        rows.add(row(french, today.minusDays(2), french ? "DEPOT AU COMPTOIR" : "COUNTER DEPOSIT", "0047", "85.00"));
        rows.add(row(french, today.minusDays(1), french ? "FRAIS MENSUELS" : "MONTHLY FEE", "", FEE));
        return String.join("\n", rows) + "\n";
    }

    private static String row(boolean french, LocalDate day, String words, String reference, String amount) {
        return french
                ? String.join(
                        ";",
                        day.format(DateTimeFormatter.ofPattern("dd/MM/uuuu", Locale.ROOT)),
                        words,
                        reference,
                        amount.replace('.', ','))
                : String.join(",", day.toString(), words.replace(",", ""), reference, amount);
    }

    private static boolean isFee(BankLine line) {
        return line.amount().decimal().equals(FEE);
    }
}
