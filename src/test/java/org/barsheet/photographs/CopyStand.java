package org.barsheet.photographs;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.FileImageOutputStream;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;

/**
 * Renders what a camera on a copy stand sees of a piece of paper with a hole and a flap, by rays
 * from the lens: flat paper, a backing behind the hole, a flap that turns up about the hole's edge
 * or slides, its shadow, the lens's shading, noise, JPEG. The camera, the light, the flap and what
 * lies about can be wrong. Nothing here is taken from what is tested but the plan's numbers.
 */
public final class CopyStand {

  /** Everything that can be wrong with one photograph. */
  public static final class Shot {
    double amount;
    public double across;
    public double down;
    double turn;
    double scale = 1;
    public double light = 1;
    double redder = 1;
    double blur;
    Optional<Thing> thing = Optional.empty();
    double spill;
    double dark;

    public Shot(double amount) {
      this.amount = amount;
    }
  }

  /**
   * Something that lies, or throws its shadow, where it should not: in pixels of the photograph.
   */
  record Thing(Kind kind, double x, double y, double size, double angle) {
    enum Kind {
      HAND,
      THREAD,
      SHADOW
    }
  }

  /**
   * How a flap moves.
   *
   * @param hinge "left", "right", "top", "bottom", or "" where it slides
   * @param slides "left", "right", "top", "bottom", or "" where it turns
   */
  record Flap(String hinge, String slides) {}

  private final int width;
  private final int height;
  private final double[] hole;
  private final Flap flap;
  private final double millimetersPerPixel;
  private final double distance;
  private final Paper table;
  private final Paper piece;
  private final boolean otherStyle;
  private final double quality;
  private final double noise;
  private final double[] backing;
  private final SplittableRandom random;

  /**
   * A stand.
   *
   * @param hole left, top, right, bottom in pixels
   * @param distance from the lens to the paper in millimeters
   * @param backing linear red, green, blue
   */
  CopyStand(
      int width,
      int height,
      double[] hole,
      Flap flap,
      double millimetersPerPixel,
      double distance,
      boolean otherStyle,
      double[] backing,
      long seed) {
    this.width = width;
    this.height = height;
    this.hole = hole;
    this.flap = flap;
    this.millimetersPerPixel = millimetersPerPixel;
    this.distance = distance;
    this.otherStyle = otherStyle;
    this.table = new Paper(width, height, otherStyle, seed);
    this.piece = new Paper(width / 2, height, otherStyle, seed + 1);
    this.quality = otherStyle ? 0.88 : 0.94;
    this.noise = otherStyle ? 0.011 : 0.006;
    this.backing = backing;
    this.random = new SplittableRandom(seed + 2);
  }

  /** A stand for what a plan asks for, framed to the pixel. */
  public static CopyStand of(PlannedSequence.Moving moving, int width, int height, long seed) {
    Rect view = moving.view().orElseThrow();
    double pixels = width / view.width();
    Rect rect = moving.opening().rect();
    double left = (rect.left() - view.left()) * pixels;
    double top = (rect.top() - view.top()) * pixels;
    double[] hole = {left, top, left + rect.width() * pixels, top + rect.height() * pixels};
    Opening.Motion motion = moving.opening().motion();
    Flap flap =
        motion instanceof Opening.Hinged hinged
            ? new Flap(word(hinged.hinge()), "")
            : new Flap("", word(((Opening.Slides) motion).toward()));
    return new CopyStand(
        width,
        height,
        hole,
        flap,
        moving.squareMillimeters() / pixels,
        moving.distanceMillimeters(),
        false,
        new double[] {0.02, 0.34, 0.05},
        seed);
  }

  private static String word(Opening.Side side) {
    return side.name().toLowerCase(Locale.ROOT);
  }

  /** Takes a photograph into a JPEG file. */
  public void take(Shot shot, Path file) throws IOException {
    write(render(shot), file, quality);
  }

  static void write(BufferedImage image, Path file, double quality) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (FileImageOutputStream out = new FileImageOutputStream(file.toFile())) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality((float) quality);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
  }

  BufferedImage render(Shot shot) {
    float[] light = new float[3 * width * height];
    double[] color = new double[3];
    double cos = Math.cos(Math.toRadians(shot.turn)) / shot.scale;
    double sin = Math.sin(Math.toRadians(shot.turn)) / shot.scale;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        java.util.Arrays.fill(color, 0);
        for (int part = 0; part < 4; part++) {
          double u = x + 0.25 + 0.5 * (part % 2) - width / 2.0 - shot.across;
          double v = y + 0.25 + 0.5 * (part >> 1) - height / 2.0 - shot.down;
          ray(shot, cos * u + sin * v, cos * v - sin * u, color);
        }
        double rim =
            Math.hypot(x - width / 2.0, y - height / 2.0) / Math.hypot(width / 2.0, height / 2.0);
        double shade = shot.light * (1 - (otherStyle ? 0.28 : 0.16) * rim * rim);
        int at = 3 * (y * width + x);
        light[at] = (float) (shade * shot.redder * color[0]);
        light[at + 1] = (float) (shade * color[1]);
        light[at + 2] = (float) (shade * color[2]);
      }
    }
    if (shot.blur > 0) {
      blur(light, shot.blur);
    }
    return developed(light);
  }

  /** Size of the hole in pixels, in the direction in which it is uncovered. */
  double travel() {
    return isAcross() ? hole[2] - hole[0] : hole[3] - hole[1];
  }

  boolean isAcross() {
    String way = flap.hinge() + flap.slides();
    return way.equals("left") || way.equals("right");
  }

  /** Share of the hole through which the backing is seen, counted by rays. */
  double uncovered(Shot shot) {
    double[] color = new double[3];
    int seen = 0;
    int all = 0;
    for (double y = hole[1] + 0.125; y < hole[3]; y += 0.25) {
      for (double x = hole[0] + 0.125; x < hole[2]; x += 0.25) {
        double way = shot.amount / millimetersPerPixel;
        double dx = flap.slides().equals("left") ? -way : flap.slides().equals("right") ? way : 0;
        double dy = flap.slides().equals("top") ? -way : flap.slides().equals("bottom") ? way : 0;
        boolean covered =
            flap.hinge().isEmpty()
                ? isInHole(x - dx, y - dy)
                : turned(shot, x - width / 2.0, y - height / 2.0, 0, color);
        seen += covered ? 0 : 1;
        all++;
      }
    }
    return (double) seen / all;
  }

  private BufferedImage developed(float[] light) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int rgb = 0;
        for (int band = 0; band < 3; band++) {
          double value = light[3 * (y * width + x) + band];
          double grain = noise * Math.sqrt(0.04 + value) * gauss();
          rgb = rgb << 8 | level(value + grain);
        }
        image.setRGB(x, y, rgb);
      }
    }
    return image;
  }

  /** The sum of twelve even numbers, near enough to normal. */
  private double gauss() {
    long bits = random.nextLong();
    long more = random.nextLong();
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      sum += ((bits >>> (10 * i)) & 1023) + ((more >>> (10 * i)) & 1023);
    }
    return sum / 1023 - 6;
  }

  private static int level(double linear) {
    double share = Math.max(0, Math.min(1, linear));
    double encoded = share <= 0.0031308 ? 12.92 * share : 1.055 * Math.pow(share, 1 / 2.4) - 0.055;
    return (int) Math.round(255 * encoded);
  }

  /** A ray through the paper at a place, in pixels from the middle; adds a quarter of its color. */
  private void ray(Shot shot, double fromX, double fromY, double[] color) {
    double x = fromX + width / 2.0;
    double y = fromY + height / 2.0;
    double share = 0.25;
    if (shot.thing.isPresent()) {
      share *= thing(shot.thing.get(), x, y, color);
      if (share == 0) {
        return;
      }
    }
    if (flap.hinge().isEmpty()) {
      slid(shot, x, y, share, color);
    } else if (!turned(shot, fromX, fromY, share, color)) {
      flat(shot, x, y, share, color);
    }
  }

  /** What the light loses there: 0 where a hand or a thread hides the paper. */
  private double thing(Thing thing, double x, double y, double[] color) {
    double dx = x - thing.x();
    double dy = y - thing.y();
    double along = dx * Math.cos(thing.angle()) + dy * Math.sin(thing.angle());
    double beside = dy * Math.cos(thing.angle()) - dx * Math.sin(thing.angle());
    switch (thing.kind()) {
      case HAND -> {
        if (Math.hypot(along / 1.6, beside) < thing.size()) {
          color[0] += 0.25 * 0.42;
          color[1] += 0.25 * 0.21;
          color[2] += 0.25 * 0.14;
          return 0;
        }
        return 1;
      }
      case THREAD -> {
        double bend = 3 * Math.sin(along / 17);
        if (Math.abs(beside - bend) < 0.8 && Math.abs(along) < thing.size()) {
          color[0] += 0.25 * 0.03;
          color[1] += 0.25 * 0.03;
          color[2] += 0.25 * 0.03;
          return 0;
        }
        return 1;
      }
      default -> {
        double rim = Math.hypot(along / 1.4, beside) / thing.size();
        return rim > 1.5 ? 1 : rim < 0.7 ? 0.85 : 1 - 0.15 * (1.5 - rim) / 0.8;
      }
    }
  }

  private double hinge(boolean across, double side) {
    int axis = across ? 0 : 1;
    return hole[side > 0 ? axis : axis + 2];
  }

  private boolean isInHole(double x, double y) {
    return x >= hole[0] && x < hole[2] && y >= hole[1] && y < hole[3];
  }

  private void slid(Shot shot, double x, double y, double share, double[] color) {
    double way = shot.amount / millimetersPerPixel;
    double dx = flap.slides().equals("left") ? -way : flap.slides().equals("right") ? way : 0;
    double dy = flap.slides().equals("top") ? -way : flap.slides().equals("bottom") ? way : 0;
    if (isInHole(x - dx, y - dy)) {
      piece.add(x - dx, y - dy, share * 0.97, color);
    } else {
      flat(shot, x, y, share, color);
    }
  }

  /** Where the ray meets the turned flap, if it does. All lengths in pixels, the table at 0. */
  private boolean turned(Shot shot, double fromX, double fromY, double share, double[] color) {
    double angle = Math.toRadians(shot.amount);
    if (shot.amount < 0.01) {
      double x = fromX + width / 2.0;
      double y = fromY + height / 2.0;
      if (!isInHole(x, y)) {
        return false;
      }
      piece.add(x, y, share, color);
      return true;
    }
    boolean across = flap.hinge().equals("left") || flap.hinge().equals("right");
    double side = flap.hinge().equals("left") || flap.hinge().equals("top") ? 1 : -1;
    double middle = across ? width / 2.0 : height / 2.0;
    double otherMiddle = across ? height / 2.0 : width / 2.0;
    double hinge = hinge(across, side) - middle;
    double length = across ? hole[2] - hole[0] : hole[3] - hole[1];
    double high = distance / millimetersPerPixel;
    double u = across ? fromX : fromY;
    double v = across ? fromY : fromX;
    double slope = side * high / Math.tan(angle);
    double t = (hinge + slope) / (u + slope);
    double reach = high * (1 - t) / Math.sin(angle);
    if (!(t > 0) || t > 1 || reach < 0 || reach > length) {
      return false;
    }
    double other = t * v + otherMiddle;
    double low = across ? hole[1] : hole[0];
    double top = across ? hole[3] : hole[2];
    if (other < low || other >= top) {
      return false;
    }
    double shade = (0.55 + 0.45 * Math.abs(Math.cos(angle))) * share;
    double place = hinge + middle + side * reach;
    piece.add(across ? place : other, across ? other : place, shade, color);
    return true;
  }

  private void flat(Shot shot, double x, double y, double share, double[] color) {
    double lit = share * shadow(shot, x, y);
    if (isInHole(x, y)) {
      double uneven = 1 - 0.12 * (y - hole[1]) / (hole[3] - hole[1]);
      double patch =
          shot.dark > 0
                  && Math.hypot(x - dark(0), y - dark(1))
                      < 0.25 * Math.min(hole[2] - hole[0], hole[3] - hole[1])
              ? 1 - shot.dark
              : 1;
      for (int band = 0; band < 3; band++) {
        color[band] += lit * uneven * patch * backing[band];
      }
      return;
    }
    if (shot.spill > 0 && isBesideHole(x, y)) {
      for (int band = 0; band < 3; band++) {
        color[band] += lit * shot.spill * backing[band];
      }
      lit *= 1 - shot.spill;
    }
    table.add(x, y, lit, color);
  }

  /** The middle of a dark patch of the backing, where the hole is uncovered first. */
  private double dark(int axis) {
    String last = flap.hinge() + flap.slides();
    String early = axis == 0 ? "left" : "top";
    String late = axis == 0 ? "right" : "bottom";
    double share = last.equals(early) ? 0.72 : last.equals(late) ? 0.28 : 0.5;
    return hole[axis] + share * (hole[axis + 2] - hole[axis]);
  }

  private boolean isBesideHole(double x, double y) {
    double by = 0.25 * Math.min(hole[2] - hole[0], hole[3] - hole[1]);
    return x >= hole[0] - by && x < hole[2] + by && y >= hole[1] - by && y < hole[3] + by;
  }

  /**
   * Share of a broad lamp from the upper left, at 45 degrees, that the turned flap lets through.
   */
  private double shadow(Shot shot, double x, double y) {
    if (flap.hinge().isEmpty() || shot.amount < 0.01) {
      return 1;
    }
    boolean across = flap.hinge().equals("left") || flap.hinge().equals("right");
    double side = flap.hinge().equals("left") || flap.hinge().equals("top") ? 1 : -1;
    double hinge = hinge(across, side);
    double length = across ? hole[2] - hole[0] : hole[3] - hole[1];
    double angle = Math.toRadians(shot.amount);
    double hidden = 0;
    for (int lamp = 0; lamp < 3; lamp++) {
      double lean = -0.6 - 0.12 * lamp;
      // A point at height h toward the lamp lies lean·h to the left and 0.35·lean·h up.
      double along = across ? lean : 0.35 * lean;
      double aside = across ? 0.35 * lean : lean;
      double u = across ? x : y;
      double v = across ? y : x;
      // u + along·h = hinge + side·a·cos, h = a·sin
      double a = (u - hinge) / (side * Math.cos(angle) - along * Math.sin(angle));
      double h = a * Math.sin(angle);
      double other = v + aside * h;
      double low = across ? hole[1] : hole[0];
      double top = across ? hole[3] : hole[2];
      hidden += a > 0 && a < length && other >= low && other < top ? 1 : 0;
    }
    return 1 - 0.4 * hidden / 3;
  }

  private void blur(float[] light, double radius) {
    int reach = (int) Math.ceil(radius);
    float[] copy = light.clone();
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        for (int band = 0; band < 3; band++) {
          float sum = 0;
          int count = 0;
          for (int down = -reach; down <= reach; down++) {
            for (int across = -reach; across <= reach; across++) {
              int column = Math.max(0, Math.min(width - 1, x + across));
              int row = Math.max(0, Math.min(height - 1, y + down));
              sum += copy[3 * (row * width + column) + band];
              count++;
            }
          }
          light[3 * (y * width + x) + band] = sum / count;
        }
      }
    }
  }
}
