package slopewright.headless.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.SurveyReach;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.evaluation.terrain.BeamView;
import slopewright.evaluation.terrain.TerrainField;
import slopewright.geometry.Angles;
import slopewright.geometry.Curvature;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.EquipmentType;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;

/** Looks from each unit into the sector in which it must be seen. */
@CommandLine.Command(name = "view", sortOptions = false,
        description = "Look from each unit of an aid, over the terrain and with the curvature of the Earth, into the sector in which it "
                + "must be seen: over the width of its beam, as steep as the obstacle surface and as far. Exits 1 unless "
                + "every unit is seen.")
final class ViewCommand extends Command {

    private static final double MOST_HALF_DEG = 45;
    private static final double MOST_RANGE_M = 60_000;

    @Mixin
    private AidWords words;

    @Option(names = "--lowest-deg", paramLabel = "DEG", converter = NumberWord.class,
            description = "lower edge of the sector (default the slope of the obstacle surface)")
    private Double lowestDeg;

    @Option(names = "--half-width-deg", paramLabel = "DEG", converter = NumberWord.class,
            description = "how far it reaches to each side (default the wider limit of the beam, else half the width of the equipment's)")
    private Double halfDeg;

    @Option(names = "--range-m", paramLabel = "M", converter = NumberWord.Length.class,
            description = "how far out it reaches (default the length of the obstacle surface)")
    private Double rangeM;

    @Option(names = "--refraction", paramLabel = "K", converter = NumberWord.class, defaultValue = "" + Curvature.USUAL_REFRACTION,
            description = "coefficient of refraction, 0 for none (default ${DEFAULT-VALUE})")
    private double refraction;

    @Option(names = "--json", description = "print one JSON document")
    private boolean json;

    /** What one unit sees. */
    private record Seen(UnitPlan unit, ProtectionSurface sector, BeamView view) {
    }

    @Override
    public Integer call() {
        AidWords.Named named = words.load();
        AidEvaluation aid = named.evaluation();
        List<Seen> seen;
        try {
            Siting siting = aid.siting().orThrow();
            Surroundings surroundings = aid.surroundings().orThrow();
            List<TerrainField> terrain = TerrainField.of(surroundings);
            seen = siting.units().stream().map(unit -> {
                ProtectionSurface sector = sector(aid, siting, unit);
                return new Seen(unit, sector, BeamView.of(unit.place(), sector, surroundings, terrain, refraction,
                        SurveyReach.covers(aid.project().getAerodrome(), aid.host(), sector)));
            }).toList();
        } catch (SitingException e) {
            throw new UsageException(e.getMessage());
        }
        Judged judged = Judged.of(words.projectEvaluation(named), named.aid());
        judged.tellOfAid(streams(), "view");
        if (json) {
            Json.print(json(aid, seen), judged.made(), streams().out);
        } else {
            seen.forEach(each -> streams().say(line(each)));
        }
        List<BeamView.State> states = seen.stream().map(each -> each.view().state()).toList();
        return states.stream().allMatch(state -> state == BeamView.State.NOT_EVALUATED) ? ExitCodes.NOTHING_EVALUATED
                : states.stream().allMatch(state -> state == BeamView.State.SEEN) ? ExitCodes.OK : ExitCodes.FINDINGS;
    }

    private ProtectionSurface sector(AidEvaluation aid, Siting siting, UnitPlan unit) {
        Optional<ProtectionSurface> surface = siting.surface().map(SurfacePlan::geometry);
        double lowest = given(lowestDeg, surface.map(ProtectionSurface::slopeDeg), "--lowest-deg");
        double range = given(rangeM, surface.map(ProtectionSurface::lengthM), "--range-m");
        double half = given(halfDeg, beam(aid), "--half-width-deg");
        if (!(half > 0 && half <= MOST_HALF_DEG && range > 0 && range <= MOST_RANGE_M && Math.abs(lowest) < MOST_HALF_DEG
                && refraction >= 0 && refraction < 1)) {
            throw new UsageException("a sector reaches up to " + MOST_HALF_DEG + "° to each side and " + MOST_RANGE_M + " m, and a "
                    + "coefficient of refraction lies from 0 to 1");
        }
        return new ProtectionSurface(unit.place().alongM(), unit.place().rightM(), unit.place().heightM(), 0, Angles.tanDeg(half), range,
                lowest, surface.map(ProtectionSurface::axisTurnDeg).orElse(0.0));
    }

    private static double given(Double said, Optional<Double> otherwise, String option) {
        return said != null ? said : otherwise.orElseThrow(() -> new UsageException("the aid does not say it: " + option));
    }

    private static Optional<Double> beam(AidEvaluation aid) {
        Double left = aid.aid().getBeamLeftLimitDeg();
        Double right = aid.aid().getBeamRightLimitDeg();
        EquipmentType type = aid.aid().getEquipment();
        Optional<Double> half = Optional.ofNullable(type == null ? null : type.getBeamWidthDeg()).map(width -> width / 2);
        return left == null && right == null ? half : Optional.of(Math.max(Math.abs(left == null ? half.orElse(0.0) : left),
                Math.abs(right == null ? half.orElse(0.0) : right)));
    }

    private static String word(BeamView.State state) {
        return state.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String line(Seen seen) {
        BeamView view = seen.view();
        List<String> parts = new ArrayList<>();
        view.ground().ifPresent(highest -> parts.add(String.format(Locale.ROOT, "the ground %.0f m out stands %.2f m %s the line, at most "
                + "%.2f m %s", seen.sector().outwardM(highest.place().alongM(), highest.place().rightM()), Math.abs(highest.aboveM()),
                highest.aboveM() > 0 ? "above" : "below", Math.abs(highest.atMostM()), highest.atMostM() > 0 ? "above" : "below")));
        view.other().ifPresent(other -> parts.add(String.format(Locale.ROOT, "%s stands %.2f m %s it", other.label(),
                Math.abs(other.marginM()), other.marginM() < 0 ? "above" : "below")));
        if (view.knownToM() < seen.sector().lengthM()) {
            parts.add(String.format(Locale.ROOT, "the ground is known to %.0f m of %.0f m", view.knownToM(), seen.sector().lengthM()));
        }
        if (!view.surveyed()) {
            parts.add("no survey says that nothing else stands in the sector");
        }
        return String.format(Locale.ROOT, "unit %s: %s%s", seen.unit().id(), word(view.state()), parts.isEmpty() ? "" : ": "
                + String.join("; ", parts));
    }

    private ObjectNode json(AidEvaluation aid, List<Seen> all) {
        ObjectNode node = Json.object();
        node.put("aid", aid.aid().getId());
        Json.put(node, "refraction", refraction);
        ArrayNode units = node.putArray("units");
        for (Seen seen : all) {
            BeamView view = seen.view();
            ObjectNode unit = units.addObject();
            unit.put("unit", seen.unit().id());
            unit.put("state", word(view.state()));
            Json.put(unit, "lowestDeg", seen.sector().slopeDeg());
            Json.put(unit, "halfWidthDeg", Math.toDegrees(Math.atan(seen.sector().divergence())));
            Json.put(unit, "rangeM", seen.sector().lengthM());
            Json.put(unit, "groundKnownToM", view.knownToM());
            unit.put("surveyed", view.surveyed());
            view.ground().ifPresent(highest -> {
                Json.put(unit, "groundAboveM", highest.aboveM());
                Json.put(unit, "groundAtMostAboveM", highest.atMostM());
                Json.put(unit, "groundOutwardM", seen.sector().outwardM(highest.place().alongM(), highest.place().rightM()));
            });
            view.other().ifPresent(other -> {
                unit.put("other", other.label());
                Json.put(unit, "otherAboveM", -other.marginM());
            });
        }
        return node;
    }
}
