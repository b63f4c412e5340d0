package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Planning;
import org.drillsheaf.program.Program;
import org.drillsheaf.saying.Speech;

/** Tells what a build came to, for people or for machines. The reading comes first, then one of the three ways it can go on. */
sealed interface BuildReport {

    void reading(Course.Stop stop);

    /** No program was looked for. */
    void noProgram(String because, Optional<Path> written);

    /** No program fits. */
    void refused(Planning planning);

    void program(Planning planning, Program program);

    void answers(ProgramQuestions.Answers answers);

    /** What the record keeps of it; comes before the last word. */
    void kept(String words);

    /** The last word after a program. */
    void written(List<Path> files);

    /** For people, line by line while the work goes on. */
    record Terminal(PrintWriter out, Speech speech, boolean explain) implements BuildReport {

        @Override
        public void reading(Course.Stop stop) {
            new ReadingText(out, speech, explain)
                    .print(stop.visit().client(), stop.visit().reading());
            stop.change().ifPresent(new ChangeText(out, speech, explain)::print);
        }

        @Override
        public void noProgram(String because, Optional<Path> written) {
            out.println();
            out.println("No program: " + because + ".");
            written.ifPresent(path -> out.println("Wrote " + path));
        }

        @Override
        public void refused(Planning planning) {
            ProgramText text = new ProgramText(out, speech, explain);
            text.goals(planning.needs().ahead());
            text.printRefusal(planning.result());
        }

        @Override
        public void program(Planning planning, Program program) {
            ProgramText text = new ProgramText(out, speech, explain);
            text.goals(planning.needs().ahead());
            text.print(program);
        }

        @Override
        public void answers(ProgramQuestions.Answers answers) {
            new ProgramText(out, speech, explain).answers(answers);
        }

        @Override
        public void kept(String words) {
            out.println();
            out.println(words);
        }

        @Override
        public void written(List<Path> files) {
            out.println();
            files.forEach(path -> out.println("Wrote " + path));
        }
    }

    /** For machines: one document, printed when everything is known. */
    final class Machine implements BuildReport {
        private final PrintWriter out;
        private final Speech speech;
        private final Map<String, Object> json = new LinkedHashMap<>();

        Machine(PrintWriter out, Speech speech) {
            this.out = out;
            this.speech = speech;
        }

        @Override
        public void reading(Course.Stop stop) {
            json.put("reading", ReadingJson.of(stop, List.of()));
        }

        @Override
        public void noProgram(String because, Optional<Path> written) {
            json.put("no-program", because);
            json.put("written", written.map(Path::toString).stream().toList());
            out.println(Json.text(json, speech));
        }

        @Override
        public void refused(Planning planning) {
            json.put("refused", ProgramJson.refusal(planning.result()));
            out.println(Json.text(json, speech));
        }

        @Override
        public void program(Planning planning, Program program) {
            json.put("program", ProgramJson.of(program));
        }

        @Override
        public void answers(ProgramQuestions.Answers answers) {
            json.put("why-not", ProgramJson.whyNot(answers));
            json.put("what-if", ProgramJson.whatIf(answers));
        }

        @Override
        public void kept(String words) {
            json.put("kept", words);
        }

        @Override
        public void written(List<Path> files) {
            json.put("written", files.stream().map(Path::toString).toList());
            out.println(Json.text(json, speech));
        }
    }
}
