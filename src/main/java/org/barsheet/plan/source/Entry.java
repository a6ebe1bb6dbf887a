package org.barsheet.plan.source;

import java.util.List;
import java.util.Optional;
import org.barsheet.input.PlainText;
import org.barsheet.plan.Where;

/**
 * A plan as typed, before anything in it is understood: texts, lists and keyed values, each with
 * its place. Plans written as YAML, as a spreadsheet or as a table all become entries first.
 */
public sealed interface Entry {

  /** Where it stands in the plan's files. */
  Where where();

  /**
   * One value.
   *
   * @param text as typed; "" where nothing was
   */
  record Text(String text, Where where) implements Entry {
    public Text {
      text = PlainText.of(text);
    }
  }

  /** Values one after another. */
  record Items(List<Entry> items, Where where) implements Entry {
    public Items {
      items = List.copyOf(items);
    }
  }

  /**
   * Values with keys.
   *
   * @param members in the order written, no key twice
   */
  record Keyed(List<Member> members, Where where) implements Entry {
    public Keyed {
      members = List.copyOf(members);
    }

    public Optional<Member> member(String key) {
      return members.stream().filter(member -> member.key().equals(key)).findFirst();
    }
  }

  /**
   * One key and its value.
   *
   * @param where the key stands
   */
  record Member(String key, Where where, Entry value) {
    public Member {
      key = PlainText.of(key);
    }
  }

  /** Whether it is a text with nothing in it. */
  default boolean isBlank() {
    return this instanceof Text text && text.text().isBlank();
  }
}
