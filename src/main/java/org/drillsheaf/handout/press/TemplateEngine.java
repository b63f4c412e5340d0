package org.drillsheaf.handout.press;

import freemarker.cache.StringTemplateLoader;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core.XMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;

/**
 * Fills templates. They may come from anybody: they see maps, lists, texts and numbers, get no class, no file and no method
 * of an object, and cannot write without end. Safe for several threads.
 */
final class TemplateEngine {
    /** More than the longest document we know, a thousand times. */
    private static final int MOST_CHARACTERS = 40_000_000;

    private final Configuration configuration;

    /** @param sources name of each template to its text */
    TemplateEngine(Map<String, String> sources) {
        StringTemplateLoader loader = new StringTemplateLoader();
        sources.forEach(loader::putTemplate);
        configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setTemplateLoader(loader);
        configuration.setDefaultEncoding("UTF-8");
        configuration.setOutputFormat(XMLOutputFormat.INSTANCE);
        configuration.setRecognizeStandardFileExtensions(false);
        configuration.setLocale(Locale.ROOT);
        configuration.setNumberFormat("computer");
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        configuration.setLocalizedLookup(false);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setObjectWrapper(new SimpleObjectWrapper(Configuration.VERSION_2_3_34));
    }

    /** The template's text with the values in it; empty when {@code problems} got an error. */
    Optional<String> fill(String name, Map<String, ?> values, Problems problems) {
        try {
            Template template = configuration.getTemplate(name);
            BoundedText text = new BoundedText();
            template.process(values, text);
            return Optional.of(text.toString());
        } catch (TemplateNotFoundException e) {
            problems.error(name, 0, "There is no such template", "Add it to the templates folder");
        } catch (ParseException e) {
            problems.error(
                    String.valueOf(e.getTemplateName()),
                    e.getLineNumber(),
                    "The template cannot be read: " + sentence(e.getEditorMessage()),
                    "Mend this line of the template");
        } catch (TemplateException e) {
            Integer line = e.getLineNumber();
            problems.error(
                    e.getTemplateSourceName() == null ? name : e.getTemplateSourceName(),
                    line == null ? 0 : line,
                    "The template fails here: " + sentence(reason(e)),
                    "Mend this line of the template");
        } catch (TooMuch e) {
            problems.error(name, 0, "The template writes without end", "Look for a loop that does not stop");
        } catch (IOException e) {
            throw new IllegalStateException("templates lie in memory and cannot fail to be read", e);
        }
        return Optional.empty();
    }

    private static String reason(TemplateException e) {
        Throwable cause = e.getCause();
        String own = e.getMessageWithoutStackTop();
        return cause != null && cause.getMessage() != null ? cause.getMessage() : own;
    }

    private static String sentence(String message) {
        String line = message.strip().lines().findFirst().orElse("").strip();
        return line.endsWith(".") || line.endsWith(":") ? line.substring(0, line.length() - 1) : line;
    }

    private static final class TooMuch extends IOException {
        private static final long serialVersionUID = 1;
    }

    /** Text in memory that has an end. */
    private static final class BoundedText extends Writer {
        private final StringBuilder text = new StringBuilder(1 << 16);

        @Override
        public void write(char[] characters, int offset, int length) throws IOException {
            if (text.length() + length > MOST_CHARACTERS) {
                throw new TooMuch();
            }
            text.append(characters, offset, length);
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}

        @Override
        public String toString() {
            return text.toString();
        }
    }
}
