import {
  AlwaysStencilFunc,
  AmbientLight,
  BackSide,
  BufferAttribute,
  BufferGeometry,
  Color,
  DecrementWrapStencilOp,
  DirectionalLight,
  DoubleSide,
  FrontSide,
  Group,
  IncrementWrapStencilOp,
  LineBasicMaterial,
  LineSegments,
  type Material,
  Matrix4,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  MOUSE,
  NotEqualStencilFunc,
  OrthographicCamera,
  Plane,
  PlaneGeometry,
  ReplaceStencilOp,
  Scene,
  type Side,
  SRGBColorSpace,
  type StencilOp,
  Vector3,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import type { PageBody, PageData } from '../../src/output/page/page-data.js';
import { pause } from './pause.js';
import type { Drawn } from './prepare.js';
import { ScaleBar } from './scale-bar.js';

const TURN_STEP = Math.PI / 24;
const ZOOM_STEP = 1.25;
const MARGIN = 1.08;
/** Squares of the bed [mm]. */
const BED_SQUARE = 10;

/** Width of the plane that cut faces are drawn on; larger than any part [mm]. */
const FACE = 1000;
const BEHIND = { polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 4 };
/** What is drawn after what: cut faces of up to 90 bodies first. */
const ORDER = { solid: 100, edges: 101, beforeGlass: 102, glass: 103 };

/** How a section lies; screws and shafts are cut with the part. */
export type Cut = 'none' | 'along' | 'across';

/** A body on the stage, with what changes when it is cut or moved. */
interface Staged {
  readonly group: Group;
  readonly body: PageBody;
  /** the corners that reach furthest */
  readonly points: Drawn['points'];
  /** what counts the body's inside along each line of sight, and the face that the section plane opens */
  readonly section: { readonly counters: readonly Mesh[]; readonly face: Mesh };
}

/** How much a body hides, and its place among those that are cut. */
interface Look {
  readonly opacity: number;
  readonly index: number;
}

/** The part in three dimensions. Pictures are drawn only when something changes. */
export class Viewer {
  readonly #data: PageData;
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #part = new Group();
  readonly #camera = new OrthographicCamera(-1, 1, 1, -1, -2000, 2000);
  readonly #controls: OrbitControls;
  readonly #plane = new Plane(new Vector3(0, 0, -1), 0);
  readonly #bodies: Staged[];
  readonly #companions: Staged[];
  readonly #bed = new Group();
  readonly #axis = new LineSegments(new BufferGeometry(), new LineBasicMaterial({ color: 0x6b2f1a }));
  readonly #scale: ScaleBar;
  readonly #stage: HTMLElement;
  #waiting = false;
  #isReady = false;
  #isAsked = false;
  #share = 0;
  #withCompanions = true;
  #lying = false;
  #half = 1;

  /** @throws Error where the browser has no WebGL */
  constructor(stage: HTMLElement, data: PageData, drawn: readonly Drawn[]) {
    this.#stage = stage;
    this.#data = data;
    this.#renderer = new WebGLRenderer({ antialias: true, alpha: true, stencil: true, preserveDrawingBuffer: true });
    this.#renderer.localClippingEnabled = true;
    this.#renderer.setPixelRatio(Math.min(2, window.devicePixelRatio));
    this.#bodies = data.bodies.map((body, i) => this.#stageBody(body, drawn[i]!, { opacity: 1, index: i }));
    this.#companions = data.companions.map((body, i) =>
      this.#stageBody(body, drawn[data.bodies.length + i]!, { opacity: data.opacity, index: data.bodies.length + i }),
    );
    for (const { group } of [...this.#bodies, ...this.#companions]) this.#part.add(group);
    this.#standBodies();
    this.#scene.add(this.#part, this.#bed, this.#axis, ...lights(this.#camera), this.#camera);
    this.#bed.visible = false;
    const canvas = this.#renderer.domElement;
    canvas.tabIndex = 0;
    canvas.setAttribute('role', 'application');
    canvas.setAttribute('aria-roledescription', 'turnable model');
    canvas.setAttribute('aria-label', 'The part in 3D. Arrow keys turn it, plus and minus zoom, Home resets the view.');
    this.#controls = new OrbitControls(this.#camera, canvas);
    this.#controls.enableDamping = false;
    this.#controls.mouseButtons = { LEFT: MOUSE.ROTATE, MIDDLE: MOUSE.DOLLY, RIGHT: MOUSE.PAN };
    // the wheel scrolls the page until the model was taken in hand
    this.#controls.enableZoom = false;
    const takeInHand = (taken: boolean) => {
      this.#controls.enableZoom = taken;
      // until then a finger that goes up or down scrolls the page
      canvas.style.touchAction = taken ? 'none' : 'pan-y';
    };
    takeInHand(false);
    canvas.addEventListener('focus', () => takeInHand(true));
    canvas.addEventListener('blur', () => takeInHand(false));
    canvas.addEventListener('keydown', (event) => this.#onKey(event));
    this.#controls.addEventListener('change', () => this.draw());
    new ResizeObserver(() => this.#resize()).observe(stage);
    canvas.style.visibility = 'hidden';
    this.#scale = new ScaleBar(stage);
    stage.append(canvas);
    this.reset();
    this.#resize();
  }

  /** Shows thing after thing out of sight, so that no single task builds all that paints them. */
  async ready(): Promise<void> {
    const things = [...this.#bodies, ...this.#companions].flatMap(({ group }) => group.children);
    const shown = things.filter(({ visible }) => visible);
    for (const thing of shown) thing.visible = false;
    for (const thing of shown) {
      thing.visible = true;
      this.#isAsked = false;
      this.#renderer.render(this.#scene, this.#camera);
      await this.#painted();
    }
    this.#renderer.domElement.style.visibility = '';
    this.#isReady = true;
    // what was painted out of sight is the first picture
    if (this.#isAsked) this.draw();
    else this.#tell();
  }

  /**
   * Waits until what was asked to be painted is painted. A canvas is copied onto the page only once it is whole, and
   * the page stands still until then: shaders that are still being compiled would hold it for as long as they take.
   */
  async #painted(): Promise<void> {
    const gl = this.#renderer.getContext() as WebGL2RenderingContext;
    const done = gl.fenceSync(gl.SYNC_GPU_COMMANDS_COMPLETE, 0);
    gl.flush();
    do await pause();
    while (done && gl.clientWaitSync(done, 0, 0) === gl.TIMEOUT_EXPIRED);
    gl.deleteSync(done);
  }

  /** Turns to the first view and fits the part. */
  reset(): void {
    this.look(this.#data.azimuth, this.#data.elevation);
  }

  /** Looks from a place on the sphere, degrees, and fits what is shown. */
  look(azimuth: number, elevation: number): void {
    const [a, e] = [(azimuth * Math.PI) / 180, (elevation * Math.PI) / 180];
    const { middle } = this.#reach();
    this.#camera.up.set(0, 0, 1);
    this.#controls.target.copy(middle);
    this.#camera.position
      .set(Math.cos(e) * Math.cos(a), Math.cos(e) * Math.sin(a), Math.sin(e))
      .multiplyScalar(500)
      .add(middle);
    this.#camera.zoom = 1;
    this.#controls.update();
    this.#fit();
  }

  /** Cuts the bodies open; `at` runs from −1 to 1 over the part. */
  cut(how: Cut, at: number): void {
    const towards = (this.#data.cutTowards * Math.PI) / 180;
    const { radius, low, high, middle } = this.#reach();
    if (how === 'across') this.#plane.setComponents(0, 0, -1, low + ((at + 1) / 2) * (high - low));
    // keeps what lies behind the plane as seen by the viewer of the first picture
    else
      this.#plane.setComponents(
        -Math.sin(towards),
        Math.cos(towards),
        0,
        at * radius - middle.dot(new Vector3(-Math.sin(towards), Math.cos(towards), 0)),
      );
    const planes = how === 'none' ? null : [this.#plane];
    for (const { group, section } of [...this.#bodies, ...this.#companions]) {
      for (const counter of section.counters) counter.visible = planes !== null;
      section.face.visible = planes !== null;
      section.face.position.copy(this.#plane.coplanarPoint(new Vector3()));
      section.face.lookAt(section.face.position.clone().sub(this.#plane.normal));
      group.traverse((thing) => {
        if (thing instanceof Mesh || thing instanceof LineSegments) setPlanes(thing.material, planes);
      });
    }
    this.draw();
  }

  /** Pulls the bodies apart by a share of their full shifts. */
  pull(share: number): void {
    this.#share = share;
    this.#standBodies();
    this.#refit();
  }

  showCompanions(shown: boolean): void {
    this.#withCompanions = shown;
    this.#refit();
  }

  /** Lays the part on the bed as it is printed, or puts it back. */
  layOnBed(lying: boolean): void {
    this.#lying = lying;
    this.#standBodies();
    this.#bed.clear();
    this.#bed.visible = lying;
    if (lying) {
      const { radius, middle } = this.#reach();
      this.#bed.position.set(middle.x, middle.y, 0);
      this.#bed.add(...bedLines(radius));
    }
    this.#refit();
  }

  zoom(factor: number): void {
    this.#camera.zoom = Math.min(20, Math.max(0.4, this.#camera.zoom * factor));
    this.#camera.updateProjectionMatrix();
    this.draw();
  }

  /** Draws once, however many ask before the next frame. */
  draw(): void {
    this.#isAsked = true;
    if (this.#waiting || !this.#isReady) return;
    this.#waiting = true;
    requestAnimationFrame(() => {
      this.#waiting = false;
      this.#renderer.render(this.#scene, this.#camera);
      this.#tell();
    });
  }

  #tell(): void {
    this.#scale.show(this.#pixelsPerMm());
    this.#stage.dataset.drawn = String(Number(this.#stage.dataset.drawn ?? 0) + 1);
  }

  #pixelsPerMm(): number {
    const { clientWidth, clientHeight } = this.#stage;
    return (Math.min(clientWidth, clientHeight) * this.#camera.zoom) / (2 * this.#half);
  }

  /** The axis of screw or shafts, as drawings show one; none where there are none, or the part lies on the bed. */
  #drawAxis(): void {
    const { low, high } = this.#reach();
    const over = 0.12 * (high - low);
    this.#axis.geometry.setAttribute(
      'position',
      new BufferAttribute(Float32Array.from(centreLine(low - over, high + over)), 3),
    );
    this.#axis.visible = this.#companions.length > 0 && !this.#lying;
  }

  /** Puts each body where it stands in use, pulled apart as far as it is; or where it lies on the bed. */
  #standBodies(): void {
    for (const { group, body } of this.#bodies) {
      const rows = [...(this.#lying ? body.onBed : body.inUse), 0, 0, 0, 1];
      group.matrixAutoUpdate = false;
      group.matrix = new Matrix4().fromArray(rows).transpose();
      if (this.#lying) continue;
      const shift = new Vector3(...body.apart).multiplyScalar(this.#share);
      group.matrix.premultiply(new Matrix4().makeTranslation(shift));
    }
  }

  #onKey(event: KeyboardEvent): void {
    const turns: Record<string, readonly [number, number]> = {
      ArrowLeft: [-TURN_STEP, 0],
      ArrowRight: [TURN_STEP, 0],
      ArrowUp: [0, -TURN_STEP],
      ArrowDown: [0, TURN_STEP],
    };
    const turn = turns[event.key];
    if (turn) this.#turn(...turn);
    else if (event.key === '+' || event.key === '=') this.zoom(ZOOM_STEP);
    else if (event.key === '-') this.zoom(1 / ZOOM_STEP);
    else if (event.key === 'Home') this.reset();
    else return;
    event.preventDefault();
  }

  #turn(around: number, over: number): void {
    const { target } = this.#controls;
    const from = this.#camera.position.clone().sub(target);
    const distance = from.length();
    const azimuth = Math.atan2(from.y, from.x) + around;
    const tilt = Math.min(Math.PI - 0.01, Math.max(0.01, Math.acos(from.z / distance) + over));
    this.#camera.position
      .set(Math.sin(tilt) * Math.cos(azimuth), Math.sin(tilt) * Math.sin(azimuth), Math.cos(tilt))
      .multiplyScalar(distance)
      .add(target);
    this.#controls.update();
    this.draw();
  }

  #stageBody(body: PageBody, { corners, normals, edges, points }: Drawn, { opacity, index }: Look): Staged {
    const group = new Group();
    const surface = new BufferGeometry();
    surface.setAttribute('position', new BufferAttribute(corners, 3));
    surface.setAttribute('normal', new BufferAttribute(normals, 3));
    const glass = opacity < 1;
    const paint = new MeshLambertMaterial({ color: colourOf(body.colour), transparent: glass, opacity });
    // where a translucent face lies on a solid one, the solid one shows
    Object.assign(paint, glass ? BEHIND : {});
    const outside = new Mesh(surface, paint);
    outside.renderOrder = glass ? ORDER.glass : ORDER.solid;
    group.add(outside);
    const section = this.#sectionOf(surface, body, index);
    group.add(...section.counters);
    if (glass) {
      // only what lies nearest is to be seen, so its depth is laid down first
      const nearest = new Mesh(surface, new MeshBasicMaterial({ colorWrite: false, ...BEHIND }));
      nearest.renderOrder = ORDER.beforeGlass;
      group.add(nearest, inked(edges, 0.3, ORDER.glass));
      return { group, body, points, section };
    }
    group.add(inked(edges, 0.42, ORDER.edges));
    return { group, body, points, section };
  }

  /**
   * The face that opens where the plane cuts a body: along each line of sight, back faces are counted up and front
   * faces down; where something is left over, the plane lies inside the body. Each body is counted by itself.
   */
  #sectionOf(surface: BufferGeometry, body: PageBody, index: number): Staged['section'] {
    const counters = [counter(BackSide, IncrementWrapStencilOp), counter(FrontSide, DecrementWrapStencilOp)].map(
      (material) => {
        const mesh = new Mesh(surface, material);
        mesh.renderOrder = index;
        mesh.visible = false;
        return mesh;
      },
    );
    const face = new Mesh(new PlaneGeometry(FACE, FACE), hatched(body.cutColour));
    face.renderOrder = index + 0.5;
    face.visible = false;
    face.onAfterRender = (renderer) => renderer.clearStencil();
    this.#scene.add(face);
    return { counters, face };
  }

  /** What is shown: how high, how wide, and its middle. */
  #reach() {
    const [least, most] = [new Vector3().setScalar(Infinity), new Vector3().setScalar(-Infinity)];
    this.#eachCorner((corner) => {
      least.min(corner);
      most.max(corner);
    });
    const middle = least.clone().add(most).multiplyScalar(0.5);
    const radius = Math.hypot(most.x - least.x, most.y - least.y) / 2;
    return { low: least.z, high: most.z, radius, middle };
  }

  /** The outermost corners of what is shown, where they stand now. */
  #eachCorner(visit: (corner: Vector3) => void): void {
    this.#part.updateMatrixWorld(true);
    const corner = new Vector3();
    for (const { group, points } of [...this.#bodies, ...this.#companions]) {
      if (!group.visible) continue;
      for (let i = 0; i < points.length; i += 3) visit(corner.fromArray(points, i).applyMatrix4(group.matrixWorld));
    }
  }

  /** Fits again without turning. Screws and shafts would hang in the air once the bodies are apart. */
  #refit(): void {
    for (const { group } of this.#companions) group.visible = this.#withCompanions && this.#share === 0 && !this.#lying;
    this.#drawAxis();
    const { middle } = this.#reach();
    const move = middle.sub(this.#controls.target);
    this.#controls.target.add(move);
    this.#camera.position.add(move);
    this.#controls.update();
    this.#fit();
  }

  /** The half-height of the picture that holds all that is shown, as it stands now. */
  #fit(): void {
    const { clientWidth: width, clientHeight: height } = this.#stage;
    const [right, up, back] = [new Vector3(), new Vector3(), new Vector3()];
    this.#camera.updateMatrixWorld();
    this.#camera.matrixWorld.extractBasis(right, up, back);
    let [across, over] = [1, 1];
    this.#eachCorner((corner) => {
      corner.sub(this.#controls.target);
      across = Math.max(across, Math.abs(corner.dot(right)));
      over = Math.max(over, Math.abs(corner.dot(up)));
    });
    const [wide, tall] = spread(width, height);
    this.#half = MARGIN * Math.max(across / wide, over / tall);
    this.#resize();
  }

  #resize(): void {
    const { clientWidth: width, clientHeight: height } = this.#stage;
    if (width === 0 || height === 0) return;
    this.#renderer.setSize(width, height);
    const [wide, tall] = spread(width, height);
    Object.assign(this.#camera, {
      left: -this.#half * wide,
      right: this.#half * wide,
      top: this.#half * tall,
      bottom: -this.#half * tall,
    });
    this.#camera.updateProjectionMatrix();
    this.draw();
  }
}

/** Width and height of the stage over the smaller of both. */
function spread(width: number, height: number): [number, number] {
  const least = Math.min(width, height) || 1;
  return [width / least || 1, height / least || 1];
}

function setPlanes(material: Material | Material[], planes: Plane[] | null): void {
  for (const one of [material].flat()) one.clippingPlanes = planes;
}

/** Edges of a body as thin ink. */
function inked(edges: Drawn['edges'], opacity: number, order: number): LineSegments {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(edges, 3));
  const ink = new LineBasicMaterial({ color: 0x17242b, transparent: true, opacity });
  const lines = new LineSegments(geometry, ink);
  lines.renderOrder = order;
  return lines;
}

/** Paints nothing, and counts the faces of one side. */
function counter(side: Side, count: StencilOp): MeshBasicMaterial {
  return new MeshBasicMaterial({
    side,
    colorWrite: false,
    depthWrite: false,
    depthTest: false,
    stencilWrite: true,
    stencilFunc: AlwaysStencilFunc,
    stencilFail: count,
    stencilZFail: count,
    stencilZPass: count,
  });
}

/** A cut face: flat, with the lines of a hatched section. */
function hatched(colour: PageBody['colour']): MeshBasicMaterial {
  const material = new MeshBasicMaterial({
    color: colourOf(colour),
    side: DoubleSide,
    stencilWrite: true,
    stencilRef: 0,
    stencilFunc: NotEqualStencilFunc,
    stencilFail: ReplaceStencilOp,
    stencilZFail: ReplaceStencilOp,
    stencilZPass: ReplaceStencilOp,
  });
  material.onBeforeCompile = (shader) => {
    shader.fragmentShader = shader.fragmentShader.replace(
      '#include <color_fragment>',
      '#include <color_fragment>\nif (mod(gl_FragCoord.x - gl_FragCoord.y, 9.0) < 1.4) diffuseColor.rgb *= 0.6;',
    );
  };
  return material;
}

function colourOf([r, g, b]: PageBody['colour']): Color {
  return new Color().setRGB(r / 255, g / 255, b / 255, SRGBColorSpace);
}

/** Two lights that go with the viewer. */
function lights(camera: OrthographicCamera): AmbientLight[] {
  const key = new DirectionalLight(0xffffff, 1.9);
  key.position.set(-0.45, 0.65, 0.75);
  const fill = new DirectionalLight(0xffffff, 0.7);
  fill.position.set(0.8, -0.1, 0.45);
  camera.add(key, fill);
  return [new AmbientLight(0xffffff, 1.15)];
}

/** Long and short dashes along the axis. */
function centreLine(from: number, to: number): number[] {
  const ends: number[] = [];
  const [long, gap, short] = [8, 1.5, 1.5].map((share) => (share * (to - from)) / 60) as [number, number, number];
  for (let at = from; at < to; at += long + 2 * gap + short) {
    ends.push(0, 0, at, 0, 0, Math.min(to, at + long));
    const dot = at + long + gap;
    if (dot < to) ends.push(0, 0, dot, 0, 0, Math.min(to, dot + short));
  }
  return ends;
}

/** A bed of squares under the part. */
function bedLines(radius: number): (LineSegments | Mesh)[] {
  const half = BED_SQUARE * Math.ceil((1.4 * radius) / BED_SQUARE);
  const points: number[] = [];
  for (let at = -half; at <= half; at += BED_SQUARE) points.push(at, -half, 0, at, half, 0, -half, at, 0, half, at, 0);
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(Float32Array.from(points), 3));
  const plate = new Mesh(
    new PlaneGeometry(2 * half, 2 * half),
    new MeshBasicMaterial({ color: 0x8a979c, transparent: true, opacity: 0.16, side: DoubleSide, depthWrite: false }),
  );
  plate.position.z = -0.05;
  return [
    new LineSegments(geometry, new LineBasicMaterial({ color: 0x6f7f86, transparent: true, opacity: 0.5 })),
    plate,
  ];
}
