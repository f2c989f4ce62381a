package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Meaning;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;
import slopewright.siting.Signals;
import slopewright.siting.Siting;

/** Tells what is seen from a point. */
@CommandLine.Command(name = "signal", sortOptions = false,
        description = "What is seen from a point: the flags of 'site', a given layout, or an aid of a file as it stands.")
final class SignalCommand extends Command {

    private static final List<String> BAR_NAMES_OF_TWO = List.of("near", "far");
    private static final List<String> BAR_NAMES_OF_THREE = List.of("near", "middle", "far");

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "project file")
    private Path file;

    @Option(names = "--aid", paramLabel = "ID", description = "approach aid in the file, by id or name")
    private String aid;

    @Option(names = "--end", paramLabel = "ID", description = "runway end in the file, to solve there")
    private String end;

    @Option(names = "--helipad", paramLabel = "ID", description = "helipad or approach direction in the file, to solve there")
    private String helipad;

    @Option(names = "--along-m", required = true, paramLabel = "M",
            description = "eye: metres from the threshold, negative on the approach side")
    private String along;

    @Option(names = "--right-m", defaultValue = "0", paramLabel = "M", description = "eye: metres to the right of the landing direction")
    private String right;

    @Option(names = "--height-m", required = true, paramLabel = "M", description = "eye: metres above the threshold")
    private String height;

    @Option(names = "--by-bar", description = "one entry a bar, near to far")
    private boolean byBar;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Override
    void extend(CommandSpec target) {
        SitingFlags.addTo(target);
    }

    @Override
    public Integer call() {
        FramePoint eye = new FramePoint(length("--along-m", along), length("--right-m", right), length("--height-m", height));
        SitingSource source = SitingSource.of(spec(), new SitingSource.Names(file, aid, end, helipad));
        Siting siting = source.siting();
        source.tell(streams(), "signal");
        Observation observation = source.beam().filter(beam -> source.family().displayForm() != IndicatorFamily.DisplayForm.PANELS)
                .map(beam -> Signals.observe(source.family(), siting.units(), siting.reference(), eye, beam))
                .orElseGet(() -> Signals.observe(source.family(), siting.units(), siting.reference(), eye));
        List<Entry> entries = byBar ? byBar(observation) : observation.seen().stream().map(seen -> new Entry(seen.unit().id(), seen))
                .toList();
        if (json) {
            source.printJson(json(source, observation, entries), streams().out);
        } else {
            print(source, observation, entries);
        }
        return ExitCodes.OK;
    }

    private static double length(String option, String text) {
        try {
            return Lengths.parse(text);
        } catch (IllegalArgumentException e) {
            throw new UsageException(option + ": " + e.getMessage());
        }
    }

    /** One entry of the output: its name and what is seen there. */
    private record Entry(String id, SeenUnit seen) {
    }

    private static List<Entry> byBar(Observation observation) {
        List<Integer> bars = observation.seen().stream().map(seen -> seen.unit().bar()).distinct().sorted().toList();
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < bars.size(); i++) {
            int bar = bars.get(i);
            SeenUnit first = observation.seen().stream().filter(seen -> seen.unit().bar() == bar).findFirst().orElseThrow();
            String name = bars.size() == 2 ? BAR_NAMES_OF_TWO.get(i) : bars.size() == 3 ? BAR_NAMES_OF_THREE.get(i) : "bar " + bar;
            entries.add(new Entry(name, first));
        }
        return entries;
    }

    private static ObjectNode json(SitingSource source, Observation observation, List<Entry> entries) {
        ObjectNode node = Json.object();
        node.put("family", source.family().key());
        node.put("ruleSet", source.siting().ruleSet());
        ArrayNode seen = node.putArray("seen");
        boolean panels = source.family().displayForm() == IndicatorFamily.DisplayForm.PANELS;
        for (Entry entry : entries) {
            ObjectNode unit = seen.addObject();
            unit.put("id", entry.id());
            if (panels) {
                Json.put(unit, "offsetMin", entry.seen().offsetMin());
            } else {
                unit.put("colour", entry.seen().light().colour().key());
                unit.put("state", entry.seen().light().form().key());
                unit.put("inTransition", entry.seen().inTransition());
            }
            Json.put(unit, "elevationDeg", entry.seen().elevationDeg());
        }
        if (observation.meanings().size() == 1) {
            node.put("meaning", observation.meaning().key());
        } else {
            ObjectNode paths = node.putObject("meaning");
            observation.meanings().forEach((path, meaning) -> paths.put(path, meaning.key()));
        }
        Json.put(node, "elevationDeg", observation.elevationDeg());
        ArrayNode notes = node.putArray("notes");
        notes(source, observation).forEach(notes::add);
        return node;
    }

    private static List<String> notes(SitingSource source, Observation observation) {
        List<String> notes = new ArrayList<>(observation.remarks().stream().map(Message::english).toList());
        notes.addAll(SitingOutput.notes(source));
        return notes;
    }

    private void print(SitingSource source, Observation observation, List<Entry> entries) {
        for (Entry entry : entries) {
            SeenUnit seen = entry.seen();
            String shown = seen.offsetMin().isPresent() ? String.format(Locale.ROOT, "%.2f' above the line of the outer panels",
                    seen.offsetMin().getAsDouble()) : seen.light().form().key() + " " + seen.light().colour().key()
                            + (seen.inTransition() ? ", changing" : "");
            streams().sayf("%-12s %-28s eye %s", entry.id(), shown, Double.isNaN(seen.elevationDeg()) ? "abeam or behind"
                    : "at " + SitingOutput.angle(seen.elevationDeg()));
        }
        for (Map.Entry<String, Meaning> path : observation.meanings().entrySet()) {
            streams().say("Meaning" + Optional.of(path.getKey()).filter(name -> !name.isEmpty()).map(name -> " for the " + name
                    + " path")
                    .orElse("") + ": " + path.getValue().key());
        }
        notes(source, observation).forEach(note -> streams().say("Note: " + note));
    }
}
