package org.barsheet.plan.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.barsheet.input.Nearest;
import org.barsheet.input.SyntaxException;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanKey;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.source.Texts;

/**
 * Keyed values being read. Keys nobody knows are reported when it is made; a key left empty counts
 * as not given. A value that cannot be used is reported, and its default stands in for it until the
 * reading ends.
 */
final class PlanSection {

  private final String path;
  private final String title;
  private final Entry.Keyed entry;
  private final PlanReading reading;
  private final Set<String> unread = new HashSet<>();
  private final Set<String> mistyped = new HashSet<>();

  /**
   * Begins to read keyed values.
   *
   * @param path dotted path of keys to them, "" for the plan as a whole
   * @param title what messages call them: "film", "panel 12A"
   * @param known every key they may have
   */
  PlanSection(
      String path, String title, Entry.Keyed entry, List<PlanKey> known, PlanReading reading) {
    this.path = path;
    this.title = title;
    this.entry = entry;
    this.reading = reading;
    List<String> names = known.stream().map(PlanKey::name).toList();
    for (Entry.Member member : entry.members()) {
      if (!names.contains(member.key())) {
        String sentence = title + " has no setting called '" + member.key() + "'";
        String remedy = Nearest.remedy(member.key(), names, "");
        reading.problems().add(member.where(), sentence, remedy);
        Nearest.to(member.key(), names).ifPresent(mistyped::add);
      } else if (!member.value().isBlank()) {
        reading.given().add(child(member.key()));
      }
    }
  }

  private String child(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** What messages call it. */
  String title() {
    return title;
  }

  Where where() {
    return entry.where();
  }

  /** Where a key's value stands, or the section itself where it is not given. */
  Where where(String key) {
    return entry.member(key).map(member -> member.value().where()).orElse(entry.where());
  }

  boolean has(String key) {
    return entry(key).isPresent();
  }

  /** Whether a key is given and nothing was wrong with it so far. */
  boolean isRead(String key) {
    return has(key) && !unread.contains(key);
  }

  Optional<Entry> entry(String key) {
    return entry.member(key).map(Entry.Member::value).filter(value -> !value.isBlank());
  }

  void problem(String key, String sentence, String remedy) {
    reading.problems().add(where(key), sentence, remedy);
  }

  /** A value in its own grammar, if it is given and can be read. */
  <T> Optional<T> read(String key, Function<String, T> parser) {
    return text(key).flatMap(text -> parse(key, text, parser));
  }

  /** A value in its own grammar, or its default. */
  <T> T read(String key, T byDefault, Function<String, T> parser) {
    return read(key, parser).orElse(byDefault);
  }

  /** A value that has to be given; its stand-in is never used once the reading has ended. */
  <T> T need(String key, T standIn, String remedy, Function<String, T> parser) {
    if (!has(key) && !mistyped.contains(key)) {
      problem(key, title + " has no '" + key + "'", remedy);
    }
    return read(key, standIn, parser);
  }

  private <T> Optional<T> parse(String key, Entry.Text text, Function<String, T> parser) {
    try {
      return Optional.of(parser.apply(text.text()));
    } catch (SyntaxException wrong) {
      reading.problems().add(text.where(), key, wrong);
      unread.add(key);
      return Optional.empty();
    }
  }

  private Optional<Entry.Text> text(String key) {
    Optional<Entry> value = entry(key);
    if (value.isPresent() && !(value.get() instanceof Entry.Text)) {
      unread.add(key);
      problem(key, "'" + key + "' takes one text", "write it after '" + key + ":' on one line");
      return Optional.empty();
    }
    return value.map(Entry.Text.class::cast);
  }

  /** Several values: a list, or one text parted by semicolons. */
  <T> List<T> readAll(String key, Function<String, T> parser) {
    List<T> values = new ArrayList<>();
    for (Entry.Text text : texts(key)) {
      parse(key, text, parser).ifPresent(values::add);
    }
    return values;
  }

  private List<Entry.Text> texts(String key) {
    Entry value = entry(key).orElse(new Entry.Text("", where()));
    List<Entry.Text> texts = new ArrayList<>();
    if (value instanceof Entry.Text text) {
      for (String part : text.text().split("[;\\n]", -1)) {
        texts.add(new Entry.Text(part.strip(), text.where()));
      }
    } else if (value instanceof Entry.Items items && isAllText(items)) {
      items.items().forEach(item -> texts.add((Entry.Text) item));
    } else {
      problem(key, "'" + key + "' takes texts", "write them as [one, two]");
    }
    texts.removeIf(Entry::isBlank);
    return texts;
  }

  private static boolean isAllText(Entry.Items items) {
    return items.items().stream().allMatch(Entry.Text.class::isInstance);
  }

  /** Keyed values below a key. */
  Optional<PlanSection> section(String key, List<PlanKey> known) {
    Optional<Entry> value = entry(key);
    if (value.isPresent() && !(value.get() instanceof Entry.Keyed)) {
      reportShape(where(key), "'" + key + "'", known);
      return Optional.empty();
    }
    return value.map(keyed -> part(child(key), key, (Entry.Keyed) keyed, known));
  }

  private PlanSection part(String path, String name, Entry.Keyed keyed, List<PlanKey> known) {
    String of = this.path.isEmpty() ? "" : " of " + title;
    return new PlanSection(path, name + of, keyed, known, reading);
  }

  /**
   * A list of keyed values below a key.
   *
   * @param one what one of them is called; a key of this name holds its name, else they are
   *     numbered from 1
   */
  List<PlanSection> sections(String key, String one, List<PlanKey> known) {
    boolean isNamed = known.stream().anyMatch(planKey -> planKey.name().equals(one));
    List<PlanSection> sections = new ArrayList<>();
    for (Entry item : items(key)) {
      String number = (isNamed ? "no. " : "") + (sections.size() + 1);
      if (item instanceof Entry.Keyed keyed) {
        String name = nameIn(keyed, one).orElse(number);
        sections.add(part(child(key) + "." + name, one + " " + name, keyed, known));
      } else {
        reportShape(item.where(), one + " " + number, known);
      }
    }
    return sections;
  }

  private static Optional<String> nameIn(Entry.Keyed keyed, String key) {
    return keyed
        .member(key)
        .map(Entry.Member::value)
        .filter(value -> value instanceof Entry.Text && !value.isBlank())
        .map(value -> ((Entry.Text) value).text().strip());
  }

  private void reportShape(Where where, String what, List<PlanKey> known) {
    String remedy = "known there: " + PlanKey.names(known);
    reading.problems().add(where, what + " takes settings of its own", remedy);
  }

  private List<Entry> items(String key) {
    Optional<Entry> value = entry(key);
    if (value.isEmpty()) {
      return List.of();
    }
    if (value.get() instanceof Entry.Items items) {
      return items.items();
    }
    if (value.get() instanceof Entry.Keyed) {
      return List.of(value.get());
    }
    problem(key, "'" + key + "' takes a list", "begin each part of it with '- '");
    return List.of();
  }

  /** Keyed values that a person names freely: motifs, models, openings, performers. */
  List<Named> named(String key, String one, List<PlanKey> known) {
    Optional<Entry> value = entry(key);
    List<Named> sections = new ArrayList<>();
    if (value.isPresent() && value.get() instanceof Entry.Keyed keyed) {
      for (Entry.Member member : keyed.members()) {
        namedSection(key, one, member, known).ifPresent(sections::add);
      }
    } else if (value.isPresent()) {
      problem(
          key,
          "'" + key + "' takes names, each with settings of its own",
          "write name: {…} below it");
    }
    return sections;
  }

  private Optional<Named> namedSection(
      String key, String one, Entry.Member member, List<PlanKey> known) {
    String name = member.key();
    try {
      Texts.name(name);
    } catch (SyntaxException wrong) {
      reading.problems().add(member.where(), one, wrong);
    }
    Entry value = member.value();
    if (value.isBlank()) {
      value = new Entry.Keyed(List.of(), member.where());
    }
    if (value instanceof Entry.Keyed keyed) {
      PlanSection section = part(child(key) + "." + name, one + " " + name, keyed, known);
      return Optional.of(new Named(name, member.where(), section));
    }
    reportShape(value.where(), one + " " + name, known);
    return Optional.empty();
  }

  /**
   * A name a person chose, and what they say of it.
   *
   * @param where the name stands
   */
  record Named(String name, Where where, PlanSection section) {}
}
