package slopewright.headless.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

import slopewright.checks.SetUpGate;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.MadeFrom;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.portable.Azimuth;
import slopewright.evaluation.portable.BatteryEndurance;
import slopewright.evaluation.portable.HandUnit;
import slopewright.evaluation.portable.LevellingEffect;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.evaluation.portable.SightLine;
import slopewright.messages.Message;

/** Works out the set-up of a portable unit. */
@CommandLine.Command(name = "portable", sortOptions = false,
        description = "Work out the set-up of a portable unit: slope, azimuth, sight lines, levelling and battery. Exits 1 while something "
                + "stands against setting it up.")
final class PortableCommand extends Command {

    @Mixin
    private AidWords words;

    @Option(names = "--date", paramLabel = "DAY", converter = DateWord.class,
            description = "day of the set-up, of the form 2026-01-31, for the magnetic variation (default today)")
    private LocalDate date;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    @Override
    public Integer call() {
        AidWords.Named named = words.load();
        ProjectEvaluation evaluation = words.projectEvaluation(named);
        AidEvaluation aid = evaluation.aid(named.aid());
        LocalDate day = date == null ? LocalDate.now() : date;
        Attempt<PortableSetUp> found = Attempt.of(() -> PortableSetUp.of(aid, day));
        List<Message> reasons = found.value().map(setUp -> SetUpGate.reasons(evaluation, aid, setUp))
                .orElseGet(() -> SetUpGate.reasons(evaluation, aid, found.reason().orElseThrow()));
        if (json) {
            Json.print(PortableOutput.json(named.aid(), day, found.value(), reasons), MadeFrom.of(aid.project(), aid.rules()),
                    streams().out);
        } else {
            found.value().ifPresent(setUp -> print(setUp, streams()));
            reasons.forEach(reason -> streams().say("Not for use: " + reason.english()));
            found.value().ifPresent(setUp -> setUp.notes().forEach(note -> streams().say("Note: " + note.english())));
        }
        return reasons.isEmpty() ? ExitCodes.OK : ExitCodes.FINDINGS;
    }

    private static void print(PortableSetUp found, Streams out) {
        out.sayf("%s, %s", found.label(), found.date());
        line(out, "Slope", SitingOutput.angle(found.siting().slopeDeg()));
        found.descent().ifPresent(descent -> line(out, "From the descent", descent.message().english()));
        found.descent().flatMap(descent -> descent.table()).ifPresent(entry -> line(out, "Published table",
                String.format(Locale.ROOT, "%.0f ft/min (%s form%s)", entry.descentFtMin(), entry.form().key(),
                        entry.printed() ? "" : ", interpolated")));
        line(out, "Distance", SitingOutput.length(found.siting().distanceM()));
        Azimuth azimuth = found.azimuth();
        found.hands().forEach(hand -> hand(hand, found.hands().size() > 1 ? ", unit " + hand.unit().id() : "", out));
        line(out, "Magnetic variation", String.format(Locale.ROOT, "%+.2f° (%s)", azimuth.variation().variationDeg(),
                azimuth.variation().source()));
        for (SightLine sight : found.sight().lines()) {
            String worst = sight.lowestMarginM().isEmpty() ? "nothing that is entered stands in the sector" : String.format(Locale.ROOT,
                    "%.2f m over %s, %.2f m with the unit off by its allowance", sight.marginM().orElse(Double.NaN), sight.obstacle(),
                    sight.lowestMarginM().getAsDouble());
            line(out, "Sight line", SitingOutput.angle(sight.angleDeg()) + ", " + sight.kind().message().english() + ": " + worst + "; "
                    + sight.curvature().english());
        }
        found.sight().governing().ifPresent(sight -> line(out, "Governing", sight.kind().message().english()));
        LevellingEffect.HeightError far = found.levelling().heights().get(found.levelling().heights().size() - 1);
        line(out, "Tilted by " + String.format(Locale.ROOT, "%.0f'", found.levelling().minutes()), String.format(Locale.ROOT,
                "the path is %.2f m too low or %.2f m too high at %.0f m", far.downM(), far.upM(), far.distanceM()));
        found.battery().ifPresent(battery -> line(out, "Battery", hours(battery)));
    }

    private static void hand(HandUnit hand, String unit, Streams out) {
        line(out, "Walk" + unit, String.format(Locale.ROOT, "%.2f m toward %.1f° true, %.1f° magnetic", hand.walkM(), hand.walkTrueDeg(),
                hand.walkMagneticDeg()));
        line(out, "Beam axis" + unit, String.format(Locale.ROOT, "%.1f° true, %.1f° magnetic", hand.beamTrueDeg(),
                hand.beamMagneticDeg()));
        hand.plate().ifPresent(reading -> line(out, "Azimuth plate" + unit, String.format(Locale.ROOT,
                "zero to %.1f° magnetic, read %.1f°, nearest mark %.1f°", reading.zeroMagneticDeg(), reading.exactDeg(),
                reading.markDeg())));
        hand.slope().ifPresent(mark -> line(out, "Slope scale" + unit, String.format(Locale.ROOT, "mark %.2f°, %+.1f' from the setting",
                mark.markDeg(), mark.offMin())));
    }

    private static String hours(BatteryEndurance battery) {
        String range = battery.leastHours() == battery.mostHours() ? String.format(Locale.ROOT, "%.1f h", battery.leastHours())
                : String.format(Locale.ROOT, "%.1f to %.1f h", battery.leastHours(), battery.mostHours());
        String levels = battery.levels().stream().map(level -> String.format(Locale.ROOT, "; step %d: at most %.1f h", level.step(), level
                .hours())).collect(Collectors.joining());
        return "at most " + range + String.format(Locale.ROOT, " from %.1f of %.0f Ah, supply %.0f to %.0f V", battery.usableAh(), battery
                .capacityAh(), battery.supplyFromV(), battery.supplyToV()) + levels;
    }

    private static void line(Streams out, String name, String text) {
        out.sayf("%-20s %s", name, text);
    }
}
