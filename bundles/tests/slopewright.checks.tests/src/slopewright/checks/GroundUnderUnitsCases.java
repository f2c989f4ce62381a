package slopewright.checks;

import java.util.List;
import java.util.function.Consumer;

import slopewright.model.GroundLevel;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.Place;
import slopewright.model.ProfilePoint;
import slopewright.model.SlopewrightFactory;

/** Cases of the rule about known ground. The row stands some 300 m from the threshold; a metre of its lenses is one of eye height. */
final class GroundUnderUnitsCases {
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private GroundUnderUnitsCases() {
    }

    static List<RuleCase> all() {
        return List.of(RuleCase.of("DATA-69", Result.PASS, "a site profile", Bases::row, Sample::levelGround),
                RuleCase.of("DATA-69", Result.NOT_EVALUATED, "no ground", Bases::row, Sample::unchanged),
                RuleCase.of("DATA-69", Result.NOT_EVALUATED, "a centre line alone", Bases::row, Sample::levelCentreLine),
                RuleCase.of("DATA-69", Result.NOT_EVALUATED, "a profile that ends before the row", Bases::row,
                        sample -> profile(sample, 200)),
                RuleCase.of("DATA-69", Result.NOT_EVALUATED, "a profile that ends at the bar of a T form", Bases::tForm,
                        sample -> profile(sample, 300)),
                RuleCase.of("DATA-69", Result.PASS, "a profile beyond the last leg unit", Bases::tForm, sample -> profile(sample, 600)),
                RuleCase.of("DATA-69", Result.PASS, "levels before and behind the row", Bases::row, levels(100, 500)),
                RuleCase.of("DATA-69", Result.NOT_EVALUATED, "levels before the row alone", Bases::row, levels(100, 200)),
                RuleCase.of("DATA-69", Result.PASS, "lenses measured as built", Bases::row,
                        sample -> sample.units(unit -> measured(unit, 100.8))),
                RuleCase.of("DATA-69", Result.NOT_EVALUATED, "angles measured alone", Bases::row,
                        sample -> sample.units(unit -> measured(unit, null))),
                RuleCase.of("DATA-69", Result.NOT_APPLICABLE, "no level of a lens", Bases::row,
                        sample -> sample.units(unit -> unit.setLensElevationM(null))),
                RuleCase.of("DATA-69", Result.NOT_APPLICABLE, "unlit panels", Bases::panels, Sample::unchanged),
                RuleCase.of("DATA-69", Result.NOT_APPLICABLE, "a helipad", Bases::padSectorOfToday, Sample::unchanged));
    }

    private static void profile(Sample sample, double toM) {
        for (double chainage : new double[] {0, toM}) {
            ProfilePoint point = MAKE.createProfilePoint();
            point.setChainageM(chainage);
            point.setElevationM(Sample.DATUM_M);
            sample.end().getSiteProfile().add(point);
        }
    }

    private static Consumer<Sample> levels(double fromM, double toM) {
        return sample -> {
            for (double along : new double[] {fromM, toM}) {
                GroundLevel level = MAKE.createGroundLevel();
                Place place = Sample.place(along, -40, Sample.DATUM_M);
                level.setPlace(place);
                sample.aerodrome().getGroundLevels().add(level);
            }
        };
    }

    private static void measured(LightUnit unit, Double lensElevationM) {
        MeasuredUnit measured = MAKE.createMeasuredUnit();
        measured.setSettingDeg(unit.getSettingDeg());
        measured.setLensElevationM(lensElevationM);
        unit.setMeasured(measured);
    }
}
