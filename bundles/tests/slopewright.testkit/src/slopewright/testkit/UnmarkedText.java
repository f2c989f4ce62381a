package slopewright.testkit;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import slopewright.messages.Argument;
import slopewright.messages.MessageRenderer;
import slopewright.model.Project;
import slopewright.model.io.Program;
import slopewright.siting.Families;
import slopewright.standards.Citation;
import slopewright.standards.CitedChoice;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/**
 * Finds what is written in {@link MessageRenderer#MARKED the marked language} and came from no catalogue: letters that stand outside the
 * marks and are no data of the project, name of a document or of the trade, key, unit, or number of a clause.
 */
public final class UnmarkedText {

    /** A text within marks; sentences stand within sentences. */
    private static final Pattern MARKED = Pattern.compile("\u27e6[^\u27e6\u27e7]*\u27e7");
    private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}'\u2019]+");
    /** Rule ids, hashes, days, places by latitude, runway designators, files, keys with dashes or points. */
    private static final Pattern NO_WORDS = Pattern.compile("\\b[A-Z]{2,5}-\\d\\d\\b|\\b[0-9a-f]{8,64}\\b|\\b\\d\\d[LRC]?/\\d\\d[LRC]?\\b"
            + "|\\b[a-z][a-z0-9-]*\\.[a-z][a-z0-9-]+\\b"
            + "|\\S+\\.(?:csv|html|pdf|svg|dxf|png|kml|geojson|slopewright|aixm|xml|txt|xlsx|gpkg)\\b|https?://\\S+");
    /** Units, abbreviations of the trade, and what is the same in every language. */
    private static final Set<String> KNOWN = Set.of("ft", "mi",
            "min", "kg", "km", "mm", "cm", "NM", "cd", "lx", "Hz", "kt", "VA", "kVA", "kW",
            "nT", "Ah",
            "MEHT", "PAPI", "APAPI", "VASI", "VASIS", "AVASI", "HAPI", "CHAPI", "ILS", "MLS", "TLOF", "FATO", "WGS", "UTM", "EPSG", "SHA",
            "PDF", "SVG", "DXF", "CSV", "XLSX", "PNG", "HTML", "KML", "TXT", "LandXML", "PNEZD", "AIXM", "GeoJSON", "GeoPackage",
            "tan", "sin", "cos", "Table", "Fig", "Figure", "Art", "Attachment", "Vol", "Slopewright", "OPS", "RDH", "TCH", "PLASI", "iii",
                    "WMM");

    private final Pattern data;

    private UnmarkedText(Set<String> data) {
        this.data = Pattern.compile("(?<![\\p{L}\\p{N}])(?:" + data.stream().map(UnmarkedText::even)
                .filter(text -> WORD.matcher(text).find()).sorted(Comparator.comparing(String::length).reversed()).map(Pattern::quote)
                .collect(Collectors.joining("|")) + ")(?![\\p{L}\\p{N}])");
    }

    /** Returns the finder for what is written about a project. */
    public static UnmarkedText of(Project project) {
        return of(project, Set.of());
    }

    /** Returns the finder for what is written about a project and about further data. */
    public static UnmarkedText of(Project project, Set<String> more) {
        Set<String> data = new HashSet<>(more);
        add(project, data);
        for (TreeIterator<EObject> all = project.eAllContents(); all.hasNext();) {
            add(all.next(), data);
        }
        for (RuleSet rules : RuleSets.all()) {
            Stream.of(rules.descriptor().name(), rules.descriptor().title()).forEach(text -> name(text, data));
            data.addAll(List.of(rules.key() + ":" + rules.edition(), rules.key(), rules.edition()));
            Stream.of(rules.values().stream().map(CitedValue::citation), rules.choices().stream().map(CitedChoice::citation),
                    rules.tableCitations().stream()).flatMap(citations -> citations).forEach(citation -> cited(citation, data));
        }
        Families.all().forEach(family -> data.add(family.key()));
        data.add(Program.text());
        return new UnmarkedText(data);
    }

    private static void cited(Citation citation, Set<String> data) {
        Stream.of(citation.source().title(), citation.source().edition(), citation.clause(), citation.note())
                .forEach(text -> name(text, data));
        data.add(citation.key());
    }

    private static void name(Argument text, Set<String> data) {
        if (text instanceof Argument.Name name) {
            data.add(name.text());
        }
    }

    private static void add(EObject element, Set<String> data) {
        for (EAttribute attribute : element.eClass().getEAllAttributes()) {
            if (attribute.getEAttributeType().getInstanceClass() == String.class && element.eIsSet(attribute)) {
                Object value = element.eGet(attribute);
                (value instanceof List<?> many ? many.stream() : Stream.of(value)).forEach(one -> data.add(String.valueOf(one)));
            }
        }
    }

    /** Returns the words of a text that came from no catalogue, each with what stands around it. */
    public Set<String> in(String text) {
        String rest = even(text);
        for (Matcher marked = MARKED.matcher(rest); marked.find(); marked = MARKED.matcher(rest)) {
            rest = marked.replaceAll("\u00b7");
        }
        String bare = data.matcher(NO_WORDS.matcher(rest).replaceAll("\u00b7")).replaceAll("\u00b7");
        Set<String> found = new TreeSet<>();
        WORD.matcher(bare).results().filter(word -> !KNOWN.contains(word.group())).forEach(word -> found.add(
                bare.substring(Math.max(0, word.start() - 12), Math.min(bare.length(), word.end() + 14))));
        return found;
    }

    private static String even(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }
}
