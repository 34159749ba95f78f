package changeover.billing.reminders;

import changeover.contracts.words.Wording;
import java.util.List;

/** Three steps in plain words that any business may begin with. */
final class StepWords {

    static final List<Step> USUAL = List.of(
            new Step(
                    7,
                    Tone.FRIENDLY,
                    new Wording("A reminder: {total} is still open", "Un rappel\u00a0: {total} reste à payer"),
                    new Wording("""
                            perhaps it was forgotten: this was to be paid by the day that stands beside it.

                            {documents}

                            If you have just paid, thank you; then there is nothing to do. A question? {answer}""", """
                            c’est peut-être un oubli\u00a0: ceci était à payer au plus tard le jour indiqué.

                            {documents}

                            Si vous venez de payer, merci; il n’y a rien à faire. Une question? {answer}"""),
                    false),
            new Step(
                    21,
                    Tone.FIRM,
                    new Wording(
                            "Second reminder: {total} is {days} days late",
                            "Deuxième rappel\u00a0: {total}, {days} jours de retard"),
                    new Wording("""
                            we wrote to you before about this, and have not received it.

                            {documents}

                            Please pay {total} within ten days, or tell us what stands in the way: we would rather find an arrangement with you than write again.""", """
                            nous vous avons déjà écrit à ce sujet et n’avons rien reçu.

                            {documents}

                            Veuillez payer {total} d’ici dix jours, ou nous dire ce qui l’empêche\u00a0: nous aimons mieux nous entendre avec vous que d’écrire encore."""),
                    false),
            new Step(
                    45,
                    Tone.LAST,
                    new Wording("Last reminder: {total}", "Dernier rappel\u00a0: {total}"),
                    new Wording("""
                            this is our last letter about what is still open.

                            {documents}

                            Please pay {total} now, or call us today. Until then we ask at the office before we come for a visit.""", """
                            voici notre dernière lettre au sujet de ce qui reste à payer.

                            {documents}

                            Veuillez payer {total} maintenant, ou nous appeler aujourd’hui. D’ici là, nous consultons le bureau avant de venir."""),
                    true));

    private StepWords() {}
}
