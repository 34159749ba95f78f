package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import java.util.List;
import java.util.Optional;

/**
 * A kind of equipment says in data what fits it and what its nameplate gives; adding a kind is adding data.
 *
 * @param code as the homes file and the tasks name it
 * @param fits what a person must know to bring the right part
 * @param nameplate figures that readings are judged by
 */
public record Kind(String code, Wording wording, List<Fact> fits, List<Fact> nameplate) {

    public Kind {
        fits = List.copyOf(fits);
        nameplate = List.copyOf(nameplate);
    }

    public Optional<Fact> fit(String name) {
        return fits.stream().filter(fact -> fact.name().equals(name)).findFirst();
    }

    public Optional<Fact> plate(String name) {
        return nameplate.stream().filter(fact -> fact.name().equals(name)).findFirst();
    }
}
