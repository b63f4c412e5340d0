package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.client.Answer;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.Release;
import org.drillsheaf.client.SafetyAnswer;
import org.drillsheaf.client.Visit;
import org.drillsheaf.saying.Saying;

/**
 * Decides from the safety answers of a visit whether anything may be built. What is not known is never treated as safe.
 *
 * @param questions all questions, in the order in which they are asked
 */
public record SafetyGate(List<SafetyQuestion> questions) {
    private static final String ACTIVE = "active";
    private static final String DISEASE = "heart-disease";
    private static final Set<String> DISEASE_CONDITIONS = Set.of("heart", "diabetes");

    public SafetyGate {
        questions = List.copyOf(questions);
    }

    public SafetyReading read(Client client, List<ClientCondition> conditions, Visit visit) {
        List<SafetyReading.Flag> stopping = new ArrayList<>();
        List<SafetyReading.Flag> holding = new ArrayList<>();
        List<SafetyReading.Flag> released = new ArrayList<>();
        List<SafetyQuestion> unanswered = new ArrayList<>();
        List<String> suggested = new ArrayList<>();
        Set<String> ids = conditions.stream().map(ClientCondition::id).collect(Collectors.toSet());
        for (SafetyQuestion question : questions) {
            SafetyAnswer answer = visit.safety().get(question.id());
            boolean blocks = question.effect() != SafetyQuestion.Effect.ADVISE;
            if (answer == null) {
                if (blocks && isAsked(question, client, visit, ids)) {
                    unanswered.add(question);
                }
            } else if (answer.answer() != Answer.NO) {
                Optional<Release> release = release(question, answer, conditions, visit);
                SafetyReading.Flag flag = new SafetyReading.Flag(question, answer, words(question, answer, release));
                if (!blocks) {
                    question.suggests().filter(s -> !ids.contains(s)).ifPresent(suggested::add);
                } else if (release.isPresent()) {
                    released.add(flag);
                } else if (question.effect() == SafetyQuestion.Effect.STOP) {
                    stopping.add(flag);
                } else {
                    holding.add(flag);
                }
            }
        }
        SafetyReading.Clearance clearance = clearance(visit, ids);
        return new SafetyReading(
                status(stopping, holding, unanswered),
                stopping,
                holding,
                unanswered,
                released,
                clearance,
                advice(clearance, visit, ids),
                suggested);
    }

    private static SafetyStatus status(
            List<SafetyReading.Flag> stopping, List<SafetyReading.Flag> holding, List<SafetyQuestion> unanswered) {
        if (!stopping.isEmpty()) {
            return SafetyStatus.STOPPED;
        }
        if (!unanswered.isEmpty()) {
            return SafetyStatus.UNANSWERED;
        }
        return holding.isEmpty() ? SafetyStatus.CLEAR : SafetyStatus.HELD;
    }

    /** With only a year of birth the client may be a year younger than the difference of the years. */
    private static boolean isAsked(SafetyQuestion question, Client client, Visit visit, Set<String> conditions) {
        int oldest = client.born().ageOn(visit.date());
        int youngest = client.born().date().isPresent() ? oldest : oldest - 1;
        return question.askedIf().holds(youngest, oldest, conditions);
    }

    /** A written word that was there on the day of the visit, with the answer itself or with a condition. */
    private static Optional<Release> release(
            SafetyQuestion question, SafetyAnswer answer, List<ClientCondition> conditions, Visit visit) {
        return answer.release()
                .or(() -> conditions.stream()
                        .filter(c -> c.releases().contains(question.id()))
                        .flatMap(c -> c.release().stream())
                        .findFirst())
                .filter(r -> !r.date().isAfter(visit.date()));
    }

    private static Saying words(SafetyQuestion question, SafetyAnswer answer, Optional<Release> release) {
        Saying.Phrase said = Saying.phrase(answer.answer() == Answer.YES ? "safety.yes" : "safety.not-sure")
                .with("concern", new Saying.Opening(Saying.own(question.concern())));
        if (release.isPresent()) {
            return Saying.phrase("safety.released")
                    .with("answer", said)
                    .with("by", Saying.written(release.get().by()))
                    .with("date", Saying.written(release.get().date().toString()))
                    .with("words", Saying.written(release.get().words()));
        }
        boolean ask = question.asksPartAndDate()
                && (answer.part().isEmpty() || answer.date().isEmpty());
        return Saying.phrase(ask ? "safety.ask-part" : "safety.do")
                .with("answer", said)
                .with("action", Saying.own(question.action()));
    }

    /**
     * Advice before exercise, from activity, known disease and symptoms; the drills are light to moderate. Source: Riebe D et
     * al., Med Sci Sports Exerc 2015;47(11):2473–2479; the six rows of its table are from memory.
     */
    private SafetyReading.Clearance clearance(Visit visit, Set<String> conditions) {
        boolean active = is(visit, ACTIVE, Answer.YES);
        boolean disease = !is(visit, DISEASE, Answer.NO) || conditions.stream().anyMatch(DISEASE_CONDITIONS::contains);
        boolean symptoms = questions.stream()
                .filter(SafetyQuestion::isSymptom)
                .anyMatch(q -> visit.safety().containsKey(q.id()) && !is(visit, q.id(), Answer.NO));
        if (symptoms) {
            return active ? SafetyReading.Clearance.STOP_AND_SEEK : SafetyReading.Clearance.RECOMMENDED;
        }
        return disease && !active ? SafetyReading.Clearance.RECOMMENDED : SafetyReading.Clearance.NOT_NEEDED;
    }

    private static boolean is(Visit visit, String question, Answer wanted) {
        SafetyAnswer answer = visit.safety().get(question);
        return answer != null && answer.answer() == wanted;
    }

    private static List<Saying> advice(SafetyReading.Clearance clearance, Visit visit, Set<String> conditions) {
        List<Saying> advice = new ArrayList<>();
        switch (clearance) {
            case NOT_NEEDED -> {}
            case RECOMMENDED -> advice.add(Saying.phrase("advice.recommended"));
            case STOP_AND_SEEK -> advice.add(Saying.phrase("advice.stop"));
        }
        if (clearance == SafetyReading.Clearance.RECOMMENDED
                && !visit.safety().containsKey(DISEASE)
                && conditions.stream().noneMatch(DISEASE_CONDITIONS::contains)) {
            advice.add(Saying.phrase("advice.disease-not-answered"));
        }
        return advice;
    }
}
