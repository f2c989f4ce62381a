package slopewright.fuzz;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;

import slopewright.edit.AlignUnits;
import slopewright.edit.CopyAid;
import slopewright.edit.DistributeUnits;
import slopewright.edit.EditException;
import slopewright.edit.EditHistory;
import slopewright.edit.MirrorAid;
import slopewright.edit.MoveAid;
import slopewright.edit.MoveUnits;
import slopewright.edit.ProjectMirror;
import slopewright.edit.RecordedEdit;
import slopewright.edit.RemoveAid;
import slopewright.edit.RemoveElement;
import slopewright.edit.ReplaceContent;
import slopewright.edit.SetAttribute;
import slopewright.edit.SetUnitSetting;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;

/**
 * Walks through a project with random edits, undone and made again in between. At every step the project must be what it was when the
 * history stood there before, and the copy that follows must be the same to the last byte; at the end everything is undone and made again.
 */
final class Walk {

    private static final int DEPTH = 400;
    private static final int MOST_AIDS = 12;
    private static final int LEAST_AIDS = 2;
    private static final int MEASURE_EVERY = 20_000;

    private final Project project;
    private final Project first;
    private final EditHistory history = new EditHistory(DEPTH);
    private final ProjectMirror mirror;
    private final Random random;
    private final List<String> states = new ArrayList<>();
    private int at;
    private int undone;
    private int refused;
    private int renewed;
    private boolean kept;

    private Walk(Project project, long seed) {
        this.project = project;
        first = ProjectFile.copy(project);
        random = new Random(seed);
        mirror = new ProjectMirror(project);
        history.addListener(new EditHistory.Listener() {
            @Override
            public void touched(List<Identified> elements) {
                mirror.follow(ProjectMirror.states(project, elements));
                kept = true;
            }

            @Override
            public void changed(Set<String> elementIds) {
                // each step looks at the project itself
            }
        });
        states.add(text(project));
    }

    private static String text(Project project) {
        return new String(ProjectFile.bytes(project), StandardCharsets.UTF_8);
    }

    /** Walks so many edits, prints what was done, and returns how often something was not as it was. */
    static int of(Path file, int edits, long seed) throws Exception {
        Walk walk = new Walk(ProjectFile.load(file), seed);
        long begun = System.nanoTime();
        int faults = 0;
        Map<Integer, Long> memory = new HashMap<>();
        int made = 0;
        while (made < edits && faults == 0) {
            int choice = walk.random.nextInt(10);
            if (choice < 2 && walk.history.canUndo()) {
                walk.history.undo();
                walk.at--;
                walk.undone++;
            } else if (choice < 3 && walk.history.canRedo()) {
                walk.history.redo();
                walk.at++;
            } else if (walk.edit()) {
                made++;
                if (made % MEASURE_EVERY == 0) {
                    memory.put(made, used());
                }
            }
            faults += walk.differs("step " + made) ? 1 : 0;
        }
        faults += faults == 0 ? walk.thereAndBack() : 0;
        System.out.printf(Locale.ROOT, "%-15s %8d edits, %8d undone, %8d refused, %4d begun again, %4d faults, %6.0f s%n", "walk",
                made, walk.undone, walk.refused, walk.renewed, faults, (System.nanoTime() - begun) / 1e9);
        memory.entrySet().stream().sorted(Map.Entry.comparingByKey())
                .forEach(entry -> System.out.printf(Locale.ROOT, "                after %d edits %.1f MB%n", entry.getKey(),
                        entry.getValue() / 1e6));
        return faults;
    }

    private static long used() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private boolean differs(String when) {
        String now = text(project);
        boolean isAsBefore = now.equals(states.get(at));
        boolean isFollowed = now.equals(text(mirror.copy()));
        if (!isAsBefore || !isFollowed) {
            System.out.println("walk, " + when + ": " + (isAsBefore ? "the copy that follows" : "the project") + " is another one");
        }
        return !isAsBefore || !isFollowed;
    }

    private int thereAndBack() {
        int faults = 0;
        while (history.canUndo()) {
            history.undo();
            at--;
            faults += differs("undone at the end") ? 1 : 0;
        }
        while (history.canRedo()) {
            history.redo();
            at++;
            faults += differs("made again at the end") ? 1 : 0;
        }
        return faults;
    }

    /** Makes an edit; one that is refused must change nothing. */
    private boolean edit() {
        kept = false;
        try {
            RecordedEdit edit = random();
            history.perform(edit);
        } catch (EditException | SitingException | IllegalArgumentException e) {
            refused++;
            return false;
        }
        if (!kept) {
            return false;
        }
        while (states.size() > at + 1) {
            states.remove(states.size() - 1);
        }
        states.add(text(project));
        at++;
        if (states.size() > DEPTH + 1) {
            states.remove(0);
            at--;
        }
        return true;
    }

    private RecordedEdit random() {
        List<ApproachAid> aids = Projects.aids(project);
        if (aids.size() < LEAST_AIDS) {
            renewed++;
            return ReplaceContent.of("Begin again", project, ProjectFile.copy(first));
        }
        ApproachAid aid = aids.get(random.nextInt(aids.size()));
        List<LightUnit> units = List.copyOf(aid.getUnits());
        LightUnit unit = units.isEmpty() ? null : units.get(random.nextInt(units.size()));
        return switch (unit == null ? 9 : random.nextInt(12)) {
            case 0 -> MoveAid.by(aid, random.nextGaussian() * 10, random.nextGaussian() * 3);
            case 1 -> MoveUnits.by(units.subList(0, 1 + random.nextInt(units.size())), random.nextGaussian(), random.nextGaussian());
            case 2 -> AlignUnits.onBar(units, unit);
            case 3 -> AlignUnits.atOffset(units, unit);
            case 4 -> DistributeUnits.across(units);
            case 5 -> SetUnitSetting.to(unit, 2 + random.nextDouble() * 3);
            case 6 -> aids.size() < MOST_AIDS ? MirrorAid.of(aid) : RemoveAid.of(aid);
            case 7 -> aids.size() < MOST_AIDS ? copy(aid) : RemoveAid.of(aid);
            case 8 -> random.nextInt(6) == 0 ? RemoveElement.of(element()) : attribute();
            default -> attribute();
        };
    }

    private RecordedEdit copy(ApproachAid aid) {
        return CopyAid.sameGeometry(aid, CopyAid.otherEnd(aid).orElseThrow(() -> new IllegalArgumentException("no other end")));
    }

    private Identified element() {
        List<Identified> all = Ids.elements(project).stream().filter(each -> each != project && each != project.getAerodrome()).toList();
        return all.get(random.nextInt(all.size()));
    }

    private RecordedEdit attribute() {
        Identified element = Ids.elements(project).get(random.nextInt(Ids.elements(project).size()));
        List<EAttribute> attributes = element.eClass().getEAllAttributes().stream()
                .filter(each -> each.isChangeable() && !each.isMany() && !each.isDerived() && !"id".equals(each.getName())).toList();
        EAttribute attribute = attributes.get(random.nextInt(attributes.size()));
        Object old = element.eGet(attribute);
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        Object value = type == String.class ? (random.nextBoolean() ? "text " + random.nextInt(100) : null)
                : type == double.class || type == Double.class ? (Object) (Math.rint(random.nextGaussian() * 1e4) / 1e3)
                        : type == boolean.class || type == Boolean.class ? (Object) random.nextBoolean()
                                : type == int.class || type == Integer.class ? (Object) random.nextInt(100) : old;
        return SetAttribute.of(element, attribute, value);
    }
}
