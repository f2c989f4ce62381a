package slopewright.fuzz;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.checks.RuleCatalogue;
import slopewright.checks.Verdict;
import slopewright.evaluation.KeptForTheRecord;
import slopewright.evaluation.ReadBacks;
import slopewright.fuzz.Judged.Said;
import slopewright.model.AeroplaneGroup;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Named;
import slopewright.model.Obstacle;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/** A change of a project, with what it may do to the verdicts whatever the project is. */
enum Relation {

    /** An obstacle that is higher gives nothing free. */
    HIGHER_OBSTACLE {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            return one(project.getAerodrome().getObstacles().stream().filter(each -> each.getTopElevationM() != null).toList(), breaker)
                    .map(obstacle -> {
                        obstacle.setTopElevationM(obstacle.getTopElevationM() + breaker.size());
                        return obstacle.getId();
                    });
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            return Judged.noBetter(before, after, OBSTACLES::contains, change);
        }
    },

    /**
     * An obstacle that was surveyed less well gives nothing free. Left out is the angle at which the signal passes it (OBS-04): it is taken
     * at its nearest place, where one that ends below the lens is seen under the lesser angle; such a one is passed at any accuracy.
     */
    COARSER_OBSTACLE {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            return one(project.getAerodrome().getObstacles(), breaker).map(obstacle -> {
                if (breaker.upTo(2) == 0 && isNotNegative(obstacle.getHorizontalAccuracyM())) {
                    obstacle.setHorizontalAccuracyM(breaker.upTo(4) == 0 ? null : obstacle.getHorizontalAccuracyM() + breaker.size());
                } else if (isNotNegative(obstacle.getVerticalAccuracyM())) {
                    obstacle.setVerticalAccuracyM(breaker.upTo(4) == 0 ? null : obstacle.getVerticalAccuracyM() + breaker.size());
                }
                return obstacle.getId();
            });
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            return Judged.noBetter(before, after, rule -> OBSTACLES.contains(rule) && !"OBS-04".equals(rule), change);
        }
    },

    /** One more obstacle gives nothing free. */
    MORE_OBSTACLES {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            return one(project.getAerodrome().getObstacles(), breaker).map(obstacle -> {
                Obstacle more = (Obstacle) Entries.copy(obstacle);
                for (Place place : more.getPlaces()) {
                    if (place.getLatitudeDeg() != null && place.getLongitudeDeg() != null) {
                        place.setLatitudeDeg(place.getLatitudeDeg() + breaker.gaussian() * NEAR_DEG);
                        place.setLongitudeDeg(place.getLongitudeDeg() + breaker.gaussian() * NEAR_DEG);
                    }
                }
                if (more.getTopElevationM() != null) {
                    more.setTopElevationM(more.getTopElevationM() + breaker.gaussian() * 20);
                }
                Ids.assign(project);
                return obstacle.getId();
            });
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            return Judged.noBetter(before, after, OBSTACLES::contains, change);
        }
    },

    /** Wheels that hang lower clear less. */
    LOWER_WHEELS {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            List<AeroplaneGroup> groups = project.getAerodrome().getAeroplaneGroups().stream()
                    .filter(group -> group.getEyeToWheelM() != null).toList();
            return one(groups, breaker).map(group -> {
                group.setEyeToWheelM(group.getEyeToWheelM() + breaker.size() / 5);
                return group.getId();
            });
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            return Judged.noBetter(before, after, Set.of("EYE-01", "WHEEL-01", "WHEEL-02", "WHEEL-03")::contains, change);
        }
    },

    /** A unit that was measured farther from its setting is no better set. */
    WORSE_SET {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            List<LightUnit> units = Projects.aids(project).stream().flatMap(aid -> aid.getUnits().stream())
                    .filter(unit -> unit.getSettingDeg() != null && unit.getMeasured() != null
                            && unit.getMeasured().getSettingDeg() != null && unit.getMeasured().getSettingDeg() >= unit.getSettingDeg())
                    .toList();
            return one(units, breaker).map(unit -> {
                unit.getMeasured().setSettingDeg(unit.getMeasured().getSettingDeg() + breaker.size() / 50);
                return unit.getId();
            });
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            return Judged.noBetter(before, after, Set.of("UNIT-05", "BOX-04")::contains, change);
        }
    },

    /** One more lamp that is out, a unit that stands higher. */
    WORSE_UNIT {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            return one(Projects.aids(project).stream().flatMap(aid -> aid.getUnits().stream())
                    .filter(unit -> unit.getLampsOut() == null || unit.getLampsOut() >= 0).toList(), breaker).map(unit -> {
                if (breaker.upTo(2) == 0) {
                    unit.setLampsOut(unit.getLampsOut() == null ? 1 : unit.getLampsOut() + 1);
                } else if (unit.getHeightAboveGroundM() != null) {
                    unit.setHeightAboveGroundM(unit.getHeightAboveGroundM() + breaker.size() / 10);
                }
                return unit.getId();
            });
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            return Judged.noBetter(before, after, Set.of("UNIT-02", "UNIT-06")::contains, change);
        }
    },

    /** What was confirmed, read back or surveyed no longer is. */
    LESS_KNOWN {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            List<Identified> some = new ArrayList<>(project.getConfirmations());
            some.addAll(project.getReadBacks());
            some.addAll(project.getAerodrome().getObstacleSurveys());
            some.addAll(project.getAerodrome().getObstacleSurveys());
            return one(some, breaker).map(known -> {
                EcoreUtil.delete(known, true);
                return known.getId();
            });
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            before.keySet().removeIf(key -> key.endsWith(" " + change));
            return Judged.noBetter(before, after, rule -> !ABOUT_RECORDS.contains(rule), change);
        }
    },

    /** An entry that is not there is no reason for a yes; only two entries that contradict each other no longer do. */
    ABSENT {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            Entries.Entry entry = breaker.one(Entries.of(project).stream()
                    .filter(each -> !(each.feature().getEType() instanceof EEnum)).toList());
            entry.element().eUnset(entry.feature());
            return Optional.of(entry.name());
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            before.keySet().removeIf(key -> RuleCatalogue.find(key.substring(0, key.indexOf(' ')))
                    .filter(rule -> rule.getClass().getPackageName().endsWith(".plausible")).isPresent());
            return Judged.noYes(before, after, change);
        }
    },

    /** What a result does not rest on moves none. */
    REMARK {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            return one(Ids.elements(project).stream().filter(Named.class::isInstance).toList(), breaker).map(element -> {
                ((Named) element).setRemarks("another remark");
                return element.eClass().getName();
            });
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            return Judged.same(before, after, rule -> true, change);
        }
    },

    /** The order in which obstacles and groups are listed decides nothing. */
    ORDER {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            Random random = new Random(breaker.upTo(1000));
            List<Obstacle> obstacles = new ArrayList<>(project.getAerodrome().getObstacles());
            Collections.shuffle(obstacles, random);
            ECollections.setEList(project.getAerodrome().getObstacles(), obstacles);
            List<AeroplaneGroup> groups = new ArrayList<>(project.getAerodrome().getAeroplaneGroups());
            Collections.shuffle(groups, random);
            ECollections.setEList(project.getAerodrome().getAeroplaneGroups(), groups);
            return Optional.of("order");
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            return Judged.same(before, after, rule -> true, change);
        }
    },

    /** The same site on another meridian has the same verdicts. */
    OTHER_MERIDIAN {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            double shiftDeg = 0.5 * (1 + breaker.upTo(20));
            List<Entries.Entry> longitudes = Entries.of(project).stream()
                    .filter(entry -> "longitudeDeg".equals(entry.feature().getName())).toList();
            if (longitudes.stream().anyMatch(entry -> !(Math.abs((Double) entry.element().eGet(entry.feature())) <= MOST_SHIFTED_DEG))) {
                return Optional.empty();
            }
            longitudes.forEach(entry -> entry.element().eSet(entry.feature(), (Double) entry.element().eGet(entry.feature()) + shiftDeg));
            return Optional.of("meridian");
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            return Judged.same(before, after, rule -> !ABOUT_RECORDS.contains(rule) && !OF_THE_PLACE.contains(rule), change);
        }
    },

    /** The same site over another zero of heights has the same verdicts; but for rules that judge a height, or a length by the height. */
    OTHER_ZERO {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            double shiftM = 1 + breaker.upTo(16);
            if (!project.getSurveyBlocks().isEmpty()) {
                return Optional.empty();
            }
            for (Identified element : Ids.elements(project)) {
                for (String name : ELEVATIONS) {
                    EStructuralFeature elevation = element.eClass().getEStructuralFeature(name);
                    if (elevation != null && element.eGet(elevation) instanceof Double number) {
                        element.eSet(elevation, number + shiftM);
                    }
                }
            }
            return Optional.of("zero");
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            return Judged.same(before, after, rule -> !ABOUT_RECORDS.contains(rule) && !OF_THE_PLACE.contains(rule)
                    && !BY_HEIGHT.contains(rule), change);
        }
    },

    /** What was changed since it was read back never counts as read back. */
    SEALED {
        @Override
        Optional<String> change(Project project, Breaker breaker) {
            List<ReadBack> held = project.getReadBacks().stream().filter(each -> each.getElementId() != null
                    && Ids.find(project, each.getElementId())
                    .filter(element -> ReadBacks.state(project, element) == ReadBacks.State.SAME).isPresent()).toList();
            return one(held, breaker).flatMap(readBack -> {
                Identified element = Ids.find(project, readBack.getElementId()).orElseThrow();
                List<Entries.Entry> entries = Entries.of(element).stream().filter(entry -> !KeptForTheRecord.contains(entry.feature())
                        && ReadBacks.holder(entry.element()).filter(holder -> holder == element).isPresent()).toList();
                if (entries.isEmpty()) {
                    return Optional.empty();
                }
                Entries.Entry entry = breaker.one(entries);
                Object value = entry.element().eGet(entry.feature());
                Entries.change(entry, breaker);
                return value.equals(entry.element().eGet(entry.feature())) ? Optional.empty()
                        : Optional.of(element.getId() + " " + entry.name());
            });
        }

        @Override
        Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change) {
            Said said = after.get("REC-03 " + change.substring(0, change.indexOf(' ')));
            return said == null || !said.isOpen() || said.verdict() == Verdict.MET
                    ? Optional.of(change.substring(change.indexOf(' ')) + " was changed behind the seal: " + said + " " + change)
                    : Optional.empty();
        }
    };

    private static final double NEAR_DEG = 0.003;
    private static final double MOST_SHIFTED_DEG = 160;
    private static final Set<String> OBSTACLES = Set.of("OBS-01", "OBS-02", "OBS-04", "OBS-06", "OBS-08", "OBS-10", "BOX-09");
    private static final Set<String> ABOUT_RECORDS = Set.of("REC-01", "REC-02", "REC-03", "REC-04", "DATA-10", "DATA-30", "DATA-40",
            "OBS-09", "DATA-61");
    private static final Set<String> OF_THE_PLACE = Set.of("DATA-16", "DATA-21", "DATA-43", "DATA-52", "DATA-66");
    private static final Set<String> BY_HEIGHT = Set.of("DATA-25", "DATA-51", "DATA-54");
    private static final List<String> ELEVATIONS = List.of("elevationM", "thresholdElevationM", "extremityElevationM", "topElevationM",
            "lensElevationM");

    /** Changes a project; returns what was changed, empty where nothing could be. */
    abstract Optional<String> change(Project project, Breaker breaker);

    /** Returns what must not be, empty where all is as it must be. */
    abstract Optional<String> fault(Map<String, Said> before, Map<String, Said> after, String change);

    private static boolean isNotNegative(Double number) {
        return number != null && number >= 0;
    }

    private static <T extends EObject> Optional<T> one(List<T> all, Breaker breaker) {
        return all.isEmpty() ? Optional.empty() : Optional.of(breaker.one(all));
    }
}
