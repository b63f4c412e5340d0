package org.drillsheaf.desk.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;

/** Opens or makes a record and reads the knowledge of the house. Blocks; runs beside the toolkit's thread. */
public final class Opening {
    /** The demo clinic holds nobody's data, so its passphrase is no secret. */
    public static final String DEMO_PASSPHRASE = "demo clinic";

    /** Who works in the demo clinic. */
    public static final String DEMO_COACH = "Tamsin Rook";

    private final Folders folders;
    private final Path records;
    private final Clock clock;

    /** @param records folder in which saves wait while a server is away */
    public Opening(Folders folders, Path records, Clock clock) {
        this.folders = folders;
        this.records = records;
        this.clock = clock;
    }

    /** An open record with the knowledge of the house. */
    public record Opened(Store store, Knowledge knowledge) {}

    /** Why nothing was opened: mistakes in the house's own files. */
    public static final class Failed extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient List<Problem> problems;

        Failed(List<Problem> problems) {
            super(problems.isEmpty() ? "" : problems.get(0).message());
            this.problems = List.copyOf(problems);
        }

        public List<Problem> problems() {
            return problems;
        }
    }

    /** Opens the record at an address; saves wait on this machine while a server is away. */
    public Opened open(StoreAddress address, char[] passphrase) throws Failed, IOException {
        Knowledge knowledge = knowledge();
        Store store = Store.open(address, Passphrase.of(passphrase), clock);
        if (address instanceof StoreAddress.Server) {
            store.clients().waitWhileAway(records);
        }
        return opened(store, knowledge);
    }

    /** Makes a new record. */
    public Opened create(StoreAddress address, char[] passphrase) throws Failed, IOException {
        Knowledge knowledge = knowledge();
        makeRoom(address);
        return opened(Store.create(address, Passphrase.of(passphrase), clock), knowledge);
    }

    /** Opens the demo clinic, and makes it the first time from the invented clients of the samples. */
    public Opened demo(Path file) throws Failed, IOException {
        Knowledge knowledge = knowledge();
        StoreAddress.File address = new StoreAddress.File(file);
        Passphrase passphrase = Passphrase.of(DEMO_PASSPHRASE.toCharArray());
        if (Files.exists(address.file())) {
            return opened(Store.open(address, passphrase, clock), knowledge);
        }
        makeRoom(address);
        Store store = Store.create(address, passphrase, clock);
        try (Stream<Path> files = Files.list(folders.home().resolve("samples").resolve("clients"))) {
            bringIn(
                    store,
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList(),
                    DEMO_COACH);
        } catch (StoreFailure | IOException | Failed e) {
            store.close();
            Files.deleteIfExists(address.file());
            throw e;
        }
        return opened(store, knowledge);
    }

    /** The search is the first to hear of changes, so that the list of clients, which hears of them too, finds what is new. */
    private static Opened opened(Store store, Knowledge knowledge) {
        store.search().warmUp();
        return new Opened(store, knowledge);
    }

    /**
     * Adds the clients of files to a record; one that is there already is left as it is.
     *
     * @return number of clients added
     */
    public static int bringIn(Store store, List<Path> files, String who) throws IOException, Failed {
        Problems problems = new Problems();
        List<ClientText> clients = new ArrayList<>();
        for (Path file : files) {
            ClientText.parse(file.getFileName().toString(), Files.readString(file), problems)
                    .ifPresent(clients::add);
        }
        if (problems.hasErrors()) {
            throw new Failed(problems.all());
        }
        int added = 0;
        for (ClientText client : clients) {
            if (store.clients().key(client.id()).isEmpty()) {
                store.clients().add(client, who);
                added++;
            }
        }
        return added;
    }

    private Knowledge knowledge() throws Failed {
        Problems problems = new Problems();
        Optional<Knowledge> knowledge = Knowledge.read(folders, problems);
        if (knowledge.isEmpty()) {
            throw new Failed(problems.all());
        }
        return knowledge.get();
    }

    private static void makeRoom(StoreAddress address) throws IOException {
        if (address instanceof StoreAddress.File file && file.file().getParent() != null) {
            Files.createDirectories(file.file().getParent());
        }
    }

    /** What to tell about something that went wrong while opening: what, then the remedy. */
    public static String[] told(Exception failure) {
        if (failure instanceof StoreFailure store) {
            Problem problem = store.problem();
            return new String[] {problem.what() + ".", problem.remedy() + "."};
        }
        if (failure instanceof Failed failed && !failed.problems().isEmpty()) {
            Problem first = failed.problems().get(0);
            return new String[] {first.file() + ": " + first.what() + ".", first.remedy() + "."};
        }
        return new String[] {String.valueOf(failure.getMessage()), ""};
    }
}
