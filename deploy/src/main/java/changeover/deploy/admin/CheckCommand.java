package changeover.deploy.admin;

import changeover.billing.bank.BankChecks;
import changeover.billing.estimates.EstimateChecks;
import changeover.billing.invoices.ChainCheck;
import changeover.billing.ledger.LedgerChecks;
import changeover.billing.payments.PaymentChecks;
import changeover.billing.reminders.ReminderChecks;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Currency;
import java.util.List;

/** Tries every invariant that data can break, over all businesses. */
final class CheckCommand implements AdminCommand {
    @Override
    public String words() {
        return "check";
    }

    @Override
    public String help() {
        return """
                Tries every invariant that data can break, over all businesses, and prints a line for each.
                  deploy/admin check""";
    }

    @Override
    public int run(Running running, List<String> rest) throws SQLException {
        if (!rest.isEmpty()) {
            throw new Refusing("check takes no words.");
        }
        boolean well = true;
        try (Connection owner = asOfNow(running.connect("owner"))) {
            for (Invariant invariant : Invariants.all()) {
                if (exists(owner, invariant.table())) {
                    well &= holds(owner, invariant);
                }
            }
            well &= chain(owner);
            well &= taxes(owner);
            well &= refunds(owner);
            well &= paid(owner);
            well &= reminders(owner);
            well &= bankLines(owner);
            well &= estimates(owner);
            well &= journal(running, owner);
        }
        System.out.println("check all " + (well ? "ok" : "FAIL"));
        return well ? 0 : 1;
    }

    /** Every issued document's hash, computed anew from its frozen rows. */
    private static boolean chain(Connection owner) throws SQLException {
        if (!exists(owner, "invoice_issue")) {
            return true;
        }
        ChainCheck.Outcome chain = ChainCheck.of(owner);
        return said("chain", chain.documents(), chain.broken().size());
    }

    /** The tax report of all days against the heads of the documents. */
    private static boolean taxes(Connection owner) throws SQLException {
        if (!exists(owner, "invoice_tax")) {
            return true;
        }
        LedgerChecks.Found found = LedgerChecks.taxes(owner);
        return said(found.name(), found.rows(), found.bad());
    }

    /** Nobody got back more than they had paid beyond what they owed. */
    private static boolean refunds(Connection owner) throws SQLException {
        if (!exists(owner, "payment")) {
            return true;
        }
        PaymentChecks.Found found = PaymentChecks.refunds(owner);
        return said(found.name(), found.rows(), found.bad());
    }

    /** No document was paid beyond its total. */
    private static boolean paid(Connection owner) throws SQLException {
        if (!exists(owner, "payment_allocation")) {
            return true;
        }
        PaymentChecks.Found found = PaymentChecks.documents(owner);
        return said(found.name(), found.rows(), found.bad());
    }

    /** Nobody was reminded of what had been paid. */
    private static boolean reminders(Connection owner) throws SQLException {
        if (!exists(owner, "reminder_item")) {
            return true;
        }
        ReminderChecks.Found found = ReminderChecks.of(owner);
        return said(found.name(), found.rows(), found.bad());
    }

    /** No line of a bank was booked twice, nor for more than it brought. */
    private static boolean bankLines(Connection owner) throws SQLException {
        if (!exists(owner, "bank_line")) {
            return true;
        }
        BankChecks.Found found = BankChecks.of(owner);
        return said(found.name(), found.rows(), found.bad());
    }

    /** Estimates add up, and what they promised was kept. */
    private static boolean estimates(Connection owner) throws SQLException {
        if (!exists(owner, "estimate_work")) {
            return true;
        }
        EstimateChecks.Found found = EstimateChecks.of(owner);
        return said("estimates", found.rows(), found.bad());
    }

    /** The journal is read as the product does, business by business. */
    private static boolean journal(Running running, Connection owner) throws SQLException {
        if (!exists(owner, "earned_at_close")) {
            return true;
        }
        long rows = 0;
        long bad = 0;
        try (Statement statement = owner.createStatement();
                ResultSet business = statement.executeQuery("select id::text, currency from business");
                Connection app = asOfNow(running.connect("app"));
                PreparedStatement enter = app.prepareStatement("select set_config('app.tenant', ?, false)")) {
            while (business.next()) {
                enter.setString(1, business.getString(1));
                enter.execute();
                LedgerChecks.Found found = LedgerChecks.journal(
                        app, Currency.getInstance(business.getString(2).strip()));
                rows += found.rows();
                bad += found.bad();
            }
        }
        return said("journal", rows, bad);
    }

    /** One picture of the rows for all that is asked, while people go on working. */
    private static Connection asOfNow(Connection connection) throws SQLException {
        connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
        connection.setAutoCommit(false);
        return connection;
    }

    private static boolean exists(Connection owner, String table) throws SQLException {
        try (PreparedStatement ask = owner.prepareStatement("select to_regclass(?) is not null")) {
            ask.setString(1, table);
            try (ResultSet row = ask.executeQuery()) {
                return row.next() && row.getBoolean(1);
            }
        }
    }

    private static boolean holds(Connection owner, Invariant invariant) throws SQLException {
        return said(invariant.on(owner));
    }

    private static boolean said(String name, long rows, long bad) {
        return said(new Invariant.Found(name, rows, bad));
    }

    private static boolean said(Invariant.Found found) {
        System.out.println(found.line());
        return found.bad() == 0;
    }
}
