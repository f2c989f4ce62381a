package slopewright.edit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.evaluation.ProjectRules;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.siting.Side;
import slopewright.standards.RuleSet;

/**
 * Draws edits of a project. What is drawn depends on a seed and on the project as it is and on nothing else: of two equal projects the
 * same seed gives the same edit.
 */
final class RandomEdits {

    private static final int CROWD = 160;
    private static final double[] NUMBERS = {-1000, -3, -0.0, 0, 0.001, 0.5, 1, 3, 15, 45, 300, 2500, 1e9};
    private static final String[] TEXTS = {"", "north mast", "Schwelle Süd", "سارية", "<&\"'>", "four-unit-row", "icao:9th", " a b "};
    private static final String[] FAMILIES = {"four-unit-row", "two-unit-row", "two-bar", "three-bar", "heliport-sector", "tri-colour"};

    private final Project project;
    private final Random random;
    private final List<Identified> elements;

    private RandomEdits(Project project, long seed) {
        this.project = project;
        random = new Random(seed);
        elements = Ids.elements(project);
    }

    /**
     * Draws an edit.
     *
     * @return the edit, not carried out yet
     * @throws EditException where what was drawn cannot be done on this project, or another exception of the edit that says so
     */
    static RecordedEdit draw(Project project, long seed) {
        return new RandomEdits(project, seed).draw();
    }

    /** Moves a threshold, turns a direction or shifts places, whichever the project has. */
    private RecordedEdit moveSite() {
        return switch (random.nextInt(3)) {
            case 0 -> MoveThreshold.to(one(RunwayEnd.class), place());
            case 1 -> TurnDirection.to(one(ApproachDirection.class), metres());
            default -> MovePlaces.of("Move", List.of(one(Place.class)), List.of(place()));
        };
    }

    private Place place() {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        place.setLatitudeDeg(50 + random.nextInt(100) / 10000.0);
        place.setLongitudeDeg(random.nextInt(300) / 10000.0);
        return place;
    }

    private RecordedEdit draw() {
        if (random.nextInt(100) == 0) {
            return ReplaceContent.of("Begin again", project, new Sample().withProfile().withRow().project);
        }
        if (elements.size() > CROWD && random.nextInt(3) > 0) {
            return remove();
        }
        return switch (random.nextInt(16)) {
            case 0, 1, 2 -> set();
            case 3 -> refer();
            case 4, 5 -> addChild();
            case 6 -> AddAid.solve(one(ApproachHost.class), FAMILIES[random.nextInt(FAMILIES.length)], Sample.ICAO, side());
            case 7 -> remove();
            case 8 -> MoveAid.by(one(ApproachAid.class), metres(), metres());
            case 9 -> MoveUnits.by(units(), metres(), metres());
            case 10 -> random.nextBoolean() ? CopyAid.sameGeometry(one(ApproachAid.class), one(ApproachHost.class))
                    : MirrorAid.of(one(ApproachAid.class));
            case 11 -> random.nextBoolean() ? AlignUnits.onBar(units(), one(LightUnit.class)) : DistributeUnits.across(units());
            case 12 -> resolve();
            case 13 -> SetUnitSetting.to(one(LightUnit.class), 2 + random.nextInt(200) / 100.0);
            case 14 -> random.nextBoolean() ? moveSite()
                    : KeepReadBack.of(List.of(one(Identified.class)), "A. Reader", LocalDate.of(2026, 1, 1 + random.nextInt(28)));
            default -> Compound.of("Several", List.of(set(), set(), MoveAid.by(one(ApproachAid.class), metres(), metres())));
        };
    }

    private RecordedEdit resolve() {
        ApproachAid aid = one(ApproachAid.class);
        RuleSet rules = ProjectRules.of(project, aid, Optional.empty());
        return random.nextBoolean() ? ResolveAid.of(aid, rules) : SetRuleSettings.of(aid, rules);
    }

    private RecordedEdit remove() {
        Identified element = one(Identified.class);
        return element instanceof ApproachAid aid ? RemoveAid.of(aid) : RemoveElement.of(element);
    }

    private RecordedEdit set() {
        Identified element = one(Identified.class);
        List<EAttribute> attributes = element.eClass().getEAllAttributes().stream()
                .filter(attribute -> !attribute.isID() && attribute.isChangeable() && !attribute.isMany()).toList();
        EAttribute attribute = pick(attributes);
        return SetAttribute.of(element, attribute, random.nextInt(6) == 0 ? null : value(attribute));
    }

    private Object value(EAttribute attribute) {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (attribute.getEAttributeType() instanceof EEnum choices) {
            return choices.getELiterals().get(random.nextInt(choices.getELiterals().size())).getInstance();
        }
        if (type == Double.class || type == double.class) {
            return NUMBERS[random.nextInt(NUMBERS.length)];
        }
        if (type == Integer.class || type == int.class) {
            return random.nextInt(6) - 1;
        }
        if (type == Boolean.class || type == boolean.class) {
            return random.nextBoolean();
        }
        if (type == LocalDate.class) {
            return LocalDate.of(2020 + random.nextInt(10), 1, 1 + random.nextInt(28));
        }
        return TEXTS[random.nextInt(TEXTS.length)];
    }

    private RecordedEdit refer() {
        Identified element = one(Identified.class);
        List<EReference> references = element.eClass().getEAllReferences().stream()
                .filter(reference -> !reference.isContainment() && !reference.isContainer() && reference.isChangeable()).toList();
        EReference reference = pick(references);
        List<Identified> targets = new ArrayList<>(elements.stream().filter(reference.getEReferenceType()::isInstance)
                .filter(target -> random.nextInt(3) == 0).toList());
        if (!reference.isMany() && targets.size() > 1) {
            targets.subList(1, targets.size()).clear();
        }
        return SetReferences.of(element, reference, targets);
    }

    private RecordedEdit addChild() {
        Identified parent = one(Identified.class);
        List<EReference> places = parent.eClass().getEAllContainments().stream().filter(EReference::isChangeable)
                .filter(reference -> !reference.getEReferenceType().isAbstract()).toList();
        EReference place = pick(places);
        EObject child = EcoreUtil.create(place.getEReferenceType());
        for (EAttribute attribute : child.eClass().getEAllAttributes()) {
            if (!attribute.isID() && attribute.isChangeable() && !attribute.isMany() && random.nextBoolean()) {
                child.eSet(attribute, value(attribute));
            }
        }
        return AddChild.of(parent, place, (Identified) child);
    }

    private List<LightUnit> units() {
        return List.copyOf(one(ApproachAid.class).getUnits());
    }

    private Side side() {
        return random.nextBoolean() ? Side.LEFT : Side.RIGHT;
    }

    private double metres() {
        return (random.nextInt(4001) - 2000) / 100.0;
    }

    private <T> T one(Class<T> type) {
        List<T> found = elements.stream().filter(type::isInstance).map(type::cast).toList();
        return pick(found);
    }

    private <T> T pick(List<T> choices) {
        if (choices.isEmpty()) {
            throw new EditException(Message.said("plain", "the project has nothing for it"));
        }
        return choices.get(random.nextInt(choices.size()));
    }
}
