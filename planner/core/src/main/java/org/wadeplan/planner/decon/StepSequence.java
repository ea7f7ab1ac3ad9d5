package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.DeconStepRule;
import org.wadeplan.planner.round.TreatmentMode;

/**
 * Puts the round's steps around the treatments that were chosen: brush, pick, then each soak with its rinse, hang, and what
 * runs alone last. The hours of drying that a row asks for count from dry to the touch, so they come after the time that
 * the set takes to become dry, never within it.
 *
 * <p>A step's {@code when} is {@code always}, {@code plant-fragments}, {@code chemical}, {@code heat}, {@code same-water},
 * or the name of a treatment. A row that names a treatment stands in for the general rows of that step for that treatment.
 */
final class StepSequence {

    private final List<DeconStepRule> rules;
    private final List<DeconResource> resources;

    StepSequence(Biosecurity biosecurity) {
        this.rules = biosecurity.steps();
        this.resources = biosecurity.resources();
    }

    /** What is done between two sites of one water. */
    List<DeconStep> sameWater() {
        return rules.stream()
                .filter(rule -> rule.when().equals("same-water"))
                .map(StepSequence::attended)
                .toList();
    }

    /** The whole clean with these treatments, in order; what people are busy with first, what runs alone last. */
    List<DeconStep> around(Collection<AppliedTreatment> treatments) {
        List<DeconStep> steps = new ArrayList<>(general("brush", "always"));
        if (treatments.stream().anyMatch(AppliedTreatment::pickFirst)) {
            steps.addAll(general("pick", "plant-fragments"));
        }
        for (AppliedTreatment treatment : treatments) {
            if (!treatment.recipe().kind().runsAlone()) {
                steps.add(contact(treatment));
                steps.addAll(stepsFor("rinse", treatment));
            }
        }
        steps.addAll(longestHang(treatments));
        steps.addAll(alone(treatments));
        return List.copyOf(steps);
    }

    private List<DeconStep> longestHang(Collection<AppliedTreatment> treatments) {
        return treatments.stream()
                .filter(treatment -> !treatment.recipe().kind().runsAlone())
                .map(treatment -> stepsFor("hang", treatment))
                .max(Comparator.comparingInt(StepSequence::minutes))
                .orElse(List.of());
    }

    private List<DeconStep> alone(Collection<AppliedTreatment> treatments) {
        List<DeconStep> steps = new ArrayList<>();
        for (AppliedTreatment treatment : treatments) {
            if (treatment.recipe().kind() == AgentKind.FREEZE) {
                steps.add(contact(treatment));
            }
        }
        double dryingH = treatments.stream()
                .mapToDouble(StepSequence::hoursOfDrying)
                .max()
                .orElse(0);
        int roomMin = rules.stream()
                .filter(rule -> rule.step().equals("dry") && rule.when().equals("always"))
                .mapToInt(DeconStepRule::minutes)
                .max()
                .orElse(0);
        if (roomMin > 0) {
            steps.add(dry(dryLabel(), roomMin));
        }
        if (dryingH > 0) {
            String label =
                    "keep dry " + Words.number(dryingH) + " h more, counted from dry to the touch inside and out";
            steps.add(dry(label, (int) Math.ceil(dryingH * 60)));
        }
        return steps;
    }

    private DeconStep dry(String label, int minutes) {
        return new DeconStep("dry", label, minutes, false, dryingPlace(), Optional.empty());
    }

    private String dryLabel() {
        return matching("dry", "always").stream()
                .max(Comparator.comparingInt(DeconStepRule::minutes))
                .map(DeconStepRule::label)
                .orElse("dry");
    }

    private static double hoursOfDrying(AppliedTreatment treatment) {
        return treatment.recipe().kind() == AgentKind.DRY
                ? Math.max(treatment.dryingH(), treatment.contactMin() / 60)
                : treatment.dryingH();
    }

    private Optional<String> dryingPlace() {
        return rules.stream()
                .filter(rule -> rule.step().equals("dry"))
                .flatMap(rule -> rule.resource().stream())
                .findFirst();
    }

    private DeconStep contact(AppliedTreatment treatment) {
        Recipe recipe = treatment.recipe();
        Optional<DeconStepRule> rule = rulesFor("soak", recipe).stream()
                .filter(one -> isAbout(one, recipe))
                .findFirst();
        String step =
                switch (recipe.mode()) {
                    case SOAK -> "soak";
                    case SPRAY -> "spray";
                    case WIPE -> "wipe";
                    case STEAM -> "steam";
                    case FREEZE -> "freeze";
                    case DRY -> "dry";
                };
        String label = rule.map(DeconStepRule::label).orElse(plainLabel(recipe)) + ": " + treatment.wholeContactMin()
                + " min" + treatment.notForWords();
        Optional<String> resource = rule.flatMap(DeconStepRule::resource).or(() -> resourceOf(recipe));
        boolean busy = !recipe.kind().runsAlone();
        return new DeconStep(step, label, treatment.wholeContactMin(), busy, resource, recipe.target());
    }

    /** A rule about a tub of another agent says nothing of this one, nor does a rule about soaks of a spray or a wipe. */
    private boolean isAbout(DeconStepRule rule, Recipe recipe) {
        boolean named = rule.when().equals(recipe.treatment());
        Optional<String> agent = resources.stream()
                .filter(resource ->
                        rule.resource().filter(resource.id()::equals).isPresent())
                .flatMap(resource -> resource.agent().stream())
                .findFirst();
        boolean sameAgent = agent.map(recipe.agent()::equals).orElse(true);
        return sameAgent && (named || recipe.mode() == TreatmentMode.SOAK);
    }

    private static String plainLabel(Recipe recipe) {
        return switch (recipe.mode()) {
            case SOAK -> "soak in " + recipe.agent() + ", all surfaces wet";
            case SPRAY -> "spray with " + recipe.agent() + " and keep wet";
            case WIPE -> "wipe with " + recipe.agent() + " and keep wet";
            case STEAM, FREEZE, DRY -> recipe.agent();
        };
    }

    private Optional<String> resourceOf(Recipe recipe) {
        return resources.stream()
                .filter(resource -> resource.agent()
                        .filter(agent -> agent.equals(recipe.agent()))
                        .isPresent())
                .map(DeconResource::id)
                .findFirst();
    }

    private List<DeconStep> stepsFor(String step, AppliedTreatment treatment) {
        return rulesFor(step, treatment.recipe()).stream()
                .map(StepSequence::attended)
                .toList();
    }

    private List<DeconStepRule> rulesFor(String step, Recipe recipe) {
        List<DeconStepRule> own = matching(step, recipe.treatment());
        if (!own.isEmpty()) {
            return own;
        }
        List<DeconStepRule> kinds = new ArrayList<>(matching(step, recipe.kind().word()));
        if (!step.equals("brush")) {
            kinds.addAll(matching(step, "always"));
        }
        return kinds;
    }

    private List<DeconStep> general(String step, String when) {
        return matching(step, when).stream().map(StepSequence::attended).toList();
    }

    private List<DeconStepRule> matching(String step, String when) {
        return rules.stream()
                .filter(rule -> rule.step().equals(step) && rule.when().equals(when))
                .toList();
    }

    private static DeconStep attended(DeconStepRule rule) {
        return new DeconStep(rule.step(), rule.label(), rule.minutes(), true, rule.resource(), Optional.empty());
    }

    private static int minutes(List<DeconStep> steps) {
        return steps.stream().mapToInt(DeconStep::minutes).sum();
    }
}
