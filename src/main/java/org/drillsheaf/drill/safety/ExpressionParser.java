package org.drillsheaf.drill.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the small rule language: measures, settings and the drill's names, compared and joined by {@code and}, {@code or},
 * {@code not} and brackets. {@code and} binds tighter than {@code or}.
 *
 * <p>A measure may only make a rule stricter when it rises: it stands on the left of {@code >} or {@code >=} and never
 * under {@code not}, so that no larger angle, effort or dose can ever be judged milder.
 */
public final class ExpressionParser {
    private static final Pattern TOKEN =
            Pattern.compile("\\s*(>=|<=|>|<|=|\\(|\\)|[a-z][a-z0-9-]*(?::[a-z0-9-]+)?|-?\\d+(?:\\.\\d+)?)");
    private static final List<String> LABELS = List.of("drill:", "family:", "position:", "uses:", "kind:", "phase:");

    private final Map<String, SettingDefinition> settings;
    private List<String> tokens = List.of();
    private int next;

    /** @param settings the settings that the rule may name */
    public ExpressionParser(Map<String, SettingDefinition> settings) {
        this.settings = settings;
    }

    /** Why an expression cannot be read; one sentence for its author. */
    public static final class UnreadableException extends Exception {
        private static final long serialVersionUID = 1;

        UnreadableException(String message) {
            super(message);
        }
    }

    /** @throws UnreadableException when the text is no expression of the language */
    public Expression parse(String text) throws UnreadableException {
        tokens = tokens(text);
        next = 0;
        Expression expression = either(true);
        if (next < tokens.size()) {
            throw new UnreadableException("“" + tokens.get(next) + "” was not expected");
        }
        return expression;
    }

    private static List<String> tokens(String text) throws UnreadableException {
        List<String> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(text.stripTrailing());
        int end = 0;
        while (end < text.stripTrailing().length()) {
            if (!matcher.find(end) || matcher.start() != end) {
                throw new UnreadableException("“" + text.substring(end).strip() + "” is no word of the rules");
            }
            tokens.add(matcher.group(1));
            end = matcher.end();
        }
        return tokens;
    }

    private Expression either(boolean rising) throws UnreadableException {
        Expression left = both(rising);
        while (accept("or")) {
            left = new Expression.Joined(left, Expression.Joined.Word.OR, both(rising));
        }
        return left;
    }

    private Expression both(boolean rising) throws UnreadableException {
        Expression left = single(rising);
        while (accept("and")) {
            left = new Expression.Joined(left, Expression.Joined.Word.AND, single(rising));
        }
        return left;
    }

    private Expression single(boolean rising) throws UnreadableException {
        if (accept("not")) {
            return new Expression.Not(single(!rising));
        }
        if (accept("(")) {
            Expression inner = either(rising);
            if (!accept(")")) {
                throw new UnreadableException("a bracket is not closed");
            }
            return inner;
        }
        String word = take();
        if (word.equals("always")) {
            return new Expression.Always();
        }
        if (LABELS.stream().anyMatch(word::startsWith)) {
            return new Expression.Label(word);
        }
        return next < tokens.size() && operator(tokens.get(next)).isPresent()
                ? comparison(word, rising)
                : flag(word, rising);
    }

    private Expression flag(String word, boolean rising) throws UnreadableException {
        Optional<Measure> measure = Measure.of(word);
        if (measure.isPresent()) {
            if (measure.get().kind() != Measure.Kind.TRUTH) {
                throw new UnreadableException("“" + word + "” is a number and wants a comparison");
            }
            demandRising(word, rising);
            return new Expression.Flag(measure.get());
        }
        SettingDefinition setting = settings.get(word);
        boolean known = word.equals(SettingValues.BOTH_SIDES)
                || word.startsWith(SettingValues.SEEN)
                || (setting != null && setting.kind() == SettingDefinition.Kind.YES_NO);
        if (!known) {
            throw new UnreadableException("“" + word + "” is neither a measure nor a yes-or-no setting");
        }
        return new Expression.Setting(word);
    }

    private Expression comparison(String word, boolean rising) throws UnreadableException {
        Expression.Operator operator = operator(take()).orElseThrow();
        String right = take();
        SettingDefinition setting = settings.get(word);
        if (setting != null && setting.kind() == SettingDefinition.Kind.CHOICE) {
            if (operator != Expression.Operator.EQUAL || !setting.words().contains(right)) {
                throw new UnreadableException("“" + word + "” can only be = " + String.join(", ", setting.words()));
            }
            return new Expression.Choice(word, right);
        }
        if (Measure.of(word).isPresent() && Measure.of(word).get() != Measure.LEVEL) {
            boolean upward = operator == Expression.Operator.ABOVE || operator == Expression.Operator.AT_LEAST;
            demandRising(word, rising && upward);
        }
        return new Expression.Compare(operand(word), operator, operand(right));
    }

    private static void demandRising(String word, boolean rising) throws UnreadableException {
        if (!rising) {
            throw new UnreadableException(
                    "“" + word + "” may only make a rule stricter when it rises: no “not”, “<” or “=” with it");
        }
    }

    private Expression.Operand operand(String word) throws UnreadableException {
        Optional<Measure> measure = Measure.of(word).filter(m -> m.kind() == Measure.Kind.NUMBER);
        if (measure.isPresent()) {
            return new Expression.Measured(measure.get());
        }
        SettingDefinition setting = settings.get(word);
        boolean given = word.equals(SettingValues.WEEKS) || word.equals(SettingValues.AGE);
        if (given || (setting != null && setting.kind() == SettingDefinition.Kind.NUMBER)) {
            return new Expression.Configured(word);
        }
        try {
            return new Expression.Number(Double.parseDouble(word));
        } catch (NumberFormatException e) {
            throw new UnreadableException("“" + word + "” is neither a number, a measure nor a number setting");
        }
    }

    private static Optional<Expression.Operator> operator(String sign) {
        return java.util.Arrays.stream(Expression.Operator.values())
                .filter(o -> o.sign().equals(sign))
                .findFirst();
    }

    private boolean accept(String word) {
        if (next < tokens.size() && tokens.get(next).equals(word)) {
            next++;
            return true;
        }
        return false;
    }

    private String take() throws UnreadableException {
        if (next >= tokens.size()) {
            throw new UnreadableException("the rule ends too early");
        }
        return tokens.get(next++);
    }
}
