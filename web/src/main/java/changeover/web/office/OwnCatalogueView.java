package changeover.web.office;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.UnitOfMeasure;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What the forms of kinds and tasks let somebody choose from, in the reader's words. */
public record OwnCatalogueView(
        List<Choice> kinds,
        List<Choice> parts,
        List<Choice> cautions,
        List<Choice> seasons,
        List<Choice> units,
        List<Choice> plates) {

    public record Choice(String code, String words) {}

    /** @param named kinds that the form names already: they may be chosen though they are withdrawn */
    static OwnCatalogueView of(OwnCatalogue.Own own, Collection<String> named, Locale locale) {
        Catalogue trade = own.catalogue();
        List<Kind> kinds = Stream.concat(
                        trade.kinds().stream(), named.stream().flatMap(code -> trade.findKind(code).stream()))
                .distinct()
                .toList();
        return new OwnCatalogueView(
                sorted(kinds.stream()
                        .map(kind -> new Choice(kind.code(), kind.wording().in(locale)))),
                sorted(trade.parts().stream()
                        .map(part -> new Choice(part.code(), part.wording().in(locale)))),
                sorted(trade.cautions().stream()
                        .map(caution ->
                                new Choice(caution.code(), caution.title().in(locale)))),
                own.seasons().climate().seasons().stream()
                        .map(season -> new Choice(season.code(), season.name(locale)))
                        .toList(),
                Stream.of(UnitOfMeasure.values())
                        .map(unit -> new Choice(unit.code(), symbol(unit, locale)))
                        .toList(),
                sorted(kinds.stream()
                        .map(Kind::nameplate)
                        .flatMap(List::stream)
                        .map(fact -> new Choice(fact.name(), fact.wording().in(locale)))
                        .collect(java.util.stream.Collectors.toMap(Choice::code, one -> one, (one, _) -> one))
                        .values()
                        .stream()));
    }

    private static String symbol(UnitOfMeasure unit, Locale locale) {
        String symbol = unit.symbol().in(locale);
        return symbol.isEmpty() ? locale.getLanguage().equals("fr") ? "nombre" : "count" : symbol;
    }

    private static List<Choice> sorted(Stream<Choice> choices) {
        return choices.sorted(Comparator.comparing(Choice::words)).toList();
    }
}
