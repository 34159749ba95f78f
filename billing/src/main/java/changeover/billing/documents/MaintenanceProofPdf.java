package changeover.billing.documents;

/** Proof of maintenance on paper: whose home, which machines, and what was done on which day by whom. */
public final class MaintenanceProofPdf {

    private final ProofSheet sheet;
    private final Words words;
    private final Figures figures;
    private final Flow flow;

    private MaintenanceProofPdf(ProofSheet sheet) {
        this.sheet = sheet;
        this.words = Words.in(sheet.language());
        this.figures = new Figures(words);
        this.flow = new Flow(words, sheet.name(), words.say("proof.title") + ", " + sheet.title());
    }

    /** The paper as PDF/A-3b. */
    public static byte[] bytes(ProofSheet sheet) {
        return new MaintenanceProofPdf(sheet).draw();
    }

    private byte[] draw() {
        head();
        machines();
        days();
        String printed = words.say("proof.printed", "day", figures.day(sheet.printedOn()));
        return flow.bytes(words.language(), words.say("proof.title") + " " + sheet.title(), printed);
    }

    private void head() {
        float base = flow.y() + 19;
        flow.page().text(Typeface.HEADING, Type.TITLE, Ink.INK, Flow.LEFT, base, words.say("proof.title"));
        flow.to(base + 12);
        float half = Flow.WIDTH / 2;
        new FactColumns()
                .column(half)
                .fact(words.say("proof.home"), sheet.title(), sheet.address())
                .column(half)
                .fact(words.say("proof.by"), sheet.name(), sheet.business())
                .draw(flow);
        flow.down(4);
    }

    private void machines() {
        if (sheet.machines().isEmpty()) {
            return;
        }
        flow.section(words.say("card.units"), 30);
        for (ProofSheet.Machine machine : sheet.machines()) {
            flow.down(3);
            RunIn.draw(flow, machine.name(), machine.facts());
        }
    }

    private void days() {
        flow.section(words.say("proof.done"), 30);
        if (sheet.days().isEmpty()) {
            line(words.say("proof.nothing"));
        }
        for (ProofSheet.Day day : sheet.days()) {
            flow.down(3);
            RunIn.draw(flow, figures.day(day.day()), by(day) + String.join("; ", day.works()) + ".");
        }
        flow.down(6);
        line(words.say("proof.means"));
    }

    private String by(ProofSheet.Day day) {
        if (day.household()) {
            return words.say("proof.household", "who", day.by() == null ? "" : day.by()) + " ";
        }
        return day.by() == null ? "" : day.by() + ". ";
    }

    private void line(String text) {
        flow.paragraph(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT, Flow.WIDTH, text);
    }
}
