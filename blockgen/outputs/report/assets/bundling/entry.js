// What the view uses of three; the rest is left out of the bundle.
export {
  AlwaysStencilFunc, BackSide, BufferAttribute, BufferGeometry, Color, DecrementWrapStencilOp, DirectionalLight,
  DoubleSide, FrontSide, Group, HemisphereLight, IncrementWrapStencilOp, LineBasicMaterial,
  LineSegments, Matrix4, Mesh, MeshBasicMaterial, MeshLambertMaterial, NotEqualStencilFunc, OrthographicCamera, Plane, PlaneGeometry,
  Raycaster, Scene, ShaderMaterial, Vector2, Vector3, WebGLRenderer, ZeroStencilOp,
} from "three/src/Three.js";
