package slopewright.headless.internal;

import java.time.LocalDate;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Option;
import slopewright.siting.magnetic.Declination;
import slopewright.siting.magnetic.MagneticModel;

/** Computes the magnetic variation of a place and day. */
@CommandLine.Command(name = "variation", sortOptions = false,
        description = "Compute the magnetic variation at a place on a day from the bundled model. A day outside the model's time is "
                + "refused.")
final class VariationCommand extends Command {

    @Option(names = "--latitude", required = true, paramLabel = "DEG", converter = NumberWord.class,
            description = "latitude, north positive")
    private double latitudeDeg;

    @Option(names = "--longitude", required = true, paramLabel = "DEG", converter = NumberWord.class,
            description = "longitude, east positive")
    private double longitudeDeg;

    @Option(names = "--height-m", defaultValue = "0", paramLabel = "M", converter = NumberWord.Length.class,
            description = "height above the ellipsoid (default 0)")
    private double heightM;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class, description = "day of the form 2026-01-31 (default today)")
    private LocalDate date;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Override
    public Integer call() {
        LocalDate day = date == null ? LocalDate.now() : date;
        Declination found = MagneticModel.bundled().declination(latitudeDeg, longitudeDeg, heightM, day);
        if (json) {
            Json.print(json(found, day), streams().out);
        } else {
            print(found, day);
        }
        return ExitCodes.OK;
    }

    private ObjectNode json(Declination found, LocalDate day) {
        ObjectNode node = Json.object();
        Json.put(node, "latitudeDeg", latitudeDeg);
        Json.put(node, "longitudeDeg", longitudeDeg);
        Json.put(node, "heightM", heightM);
        node.put("date", day.toString());
        Json.put(node, "variationDeg", found.declinationDeg());
        Json.put(node, "annualChangeDeg", found.annualChangeDeg());
        node.put("model", found.model());
        Json.put(node, "epoch", found.epoch());
        Json.put(node, "decimalYear", found.decimalYear());
        node.put("source", found.citation().text().english());
        node.put("provenance", found.citation().provenance().key());
        ArrayNode notes = node.putArray("notes");
        found.notes().forEach(note -> notes.add(note.english()));
        return node;
    }

    private void print(Declination found, LocalDate day) {
        streams().sayf("Magnetic variation %.2f° %s on %s, changing by %+.3f° a year",
                Math.abs(found.declinationDeg()),
                found.declinationDeg() < 0 ? "west" : "east", day, found.annualChangeDeg());
        streams().sayf("%s, epoch %.1f [%s]", found.model(), found.epoch(), found.citation().provenance().key());
        found.notes().forEach(note -> streams().say("Note: " + note));
    }
}
