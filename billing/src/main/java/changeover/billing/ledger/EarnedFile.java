package changeover.billing.ledger;

import changeover.contracts.words.CsvTable;

/** What is earned and prepaid at the end of a day as a table: one row an agreement, amounts with a point. */
public final class EarnedFile {

    private EarnedFile() {}

    public static byte[] of(EarnedOn on) {
        CsvTable table = new CsvTable(
                "day",
                "agreement",
                "plan",
                "customer",
                "home",
                "from",
                "until",
                "earned_month",
                "earned_year",
                "earned",
                "invoiced",
                "prepaid",
                "ahead",
                "currency");
        for (EarnedOn.Plan plan : on.plans()) {
            table.row(
                    on.day(),
                    plan.number(),
                    plan.plan().en(),
                    plan.customer(),
                    plan.home(),
                    plan.term().from(),
                    plan.term().last(),
                    plan.earned().month().amount(),
                    plan.earned().year().amount(),
                    plan.earned().ever().amount(),
                    plan.invoiced().amount(),
                    plan.prepaid().amount(),
                    plan.ahead().amount(),
                    on.currency().getCurrencyCode());
        }
        return table.bytes();
    }
}
