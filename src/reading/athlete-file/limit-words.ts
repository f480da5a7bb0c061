import type { Condition, Joint, Stress } from "../../models/vocabulary.ts";

/**
 * Words of free text that name a joint, a stress or a condition. They only raise a question; nothing is planned or left
 * out because of them, since nobody but the coach knows what the words mean.
 */
export const JOINT_WORDS: Readonly<Record<Joint, RegExp>> = {
  neck: /\b(?:nacken|nuque|cuello|nek|neck|cervical)\b/i,
  shoulder: /\b(?:schultern?|epaules?|hombros?|schouders?|shoulders?|rotator|labrum|deltoid|ac joint)\b/i,
  elbow: /\b(?:ellbogen|coudes?|codos?|elleboog|elbows?|biceps tendon)\b/i,
  wrist: /\b(?:wrists?|handgelenke?|poignets?|munecas?)\b/i,
  hand: /\b(?:manos?|daumen|finger|hands?|thumbs?|fingers?|palms?)\b(?!\s*stand)/i,
  back: /\b(?:rucken|ruecken|espalda|lombaires?|lumbago|bandscheiben?|(?:low(?:er)?|upper|bad|sore|my|the|his|her|mid|tight) back|lumbar|spine|disc|sciatica|si joint)\b/i,
  hip: /\b(?:hufte|huefte|hanches?|caderas?|leisten?|heup|hips?|groin|hip flexors?)\b/i,
  knee: /\b(?:knien?|genoux?|rodillas?|knieen|knees?|patellar?|acl|mcl|meniscus)\b/i,
  ankle: /\b(?:sprunggelenke?|chevilles?|tobillos?|enkels?|achillessehne|ankles?|achilles|calf|calves)\b/i,
  foot: /\b(?:fuss|fusse|fuesse|pieds?|voet|foot|feet|heels?|plantar|toes?)\b(?!-?\s*to-?\s*bar)/i,
};

export const STRESS_WORDS: Readonly<Record<Stress, RegExp>> = {
  overhead: /\b(?:overhead|over head|oh|press(?:es|ing)?|jerks?|snatch(?:es)?|thrusters?|push press)\b/i,
  kipping: /\b(?:kip(?:s|ping|ped)?|butterfl(?:y|ies)|swinging)\b/i,
  impact: /\b(?:impact|jump(?:s|ing)?|runn?(?:ing)?|runs|double-?\s?unders?|skipping|box jumps?|landing)\b/i,
  "deep-knee-bend": /\b(?:squat(?:s|ting)?|pistols?|lunges?|deep knee|below parallel|full depth)\b/i,
  "loaded-hinge": /\b(?:deadlifts?|hing(?:e|es|ing)|good mornings?|heavy pulls?|picking up)\b/i,
  "hard-grip": /\b(?:grip(?:s|ping)?|hanging|farmers? carry)\b/i,
  "bent-wrist": /\b(?:front rack|bent wrists?|wrist extension)\b/i,
  "lying-on-back": /\b(?:on (?:the|her|his|my) back|supine|sit-?ups?|bench)\b/i,
  "lying-on-front": /\b(?:on (?:the|her|his|my) (?:front|belly|stomach)|prone|burpees?)\b/i,
  "upside-down": /\b(?:upside[- ]down|handstands?|inver(?:ted|sions?)|wall walks?|hspu)\b/i,
  "maximal-lift":
    /\b(?:max(?:es|imal|imum)?(?: lifts?| effort| attempts?)?|1\s?rm|heavy (?:singles?|lifts?|lifting)|going heavy)\b/i,
  "breath-holding": /\b(?:valsalva|bracing|breath[- ]hold(?:s|ing)?|holding (?:the|her|his|my) breath)\b/i,
  "fall-risk": /\b(?:rope climbs?|falling|fall risk|ring work|climbing)\b/i,
  "high-rep-pulling":
    /\b(?:(?:high[- ]rep|volume|many|lots of) (?:pull(?:ing|-?ups?)|pulling)|high[- ]rep pulling)\b/i,
};

export const CONDITION_WORDS: Readonly<Record<Condition, RegExp>> = {
  pregnancy: /\b(?:pregnan(?:t|cy)|trimester|expecting a (?:baby|child)|due in)\b/i,
  "after-birth":
    /\b(?:post-?\s?partum|post-?\s?natal|after (?:the )?birth|gave birth|c-?section|diastasis)\b/i,
  heart: /\b(?:heart|cardiac|arrhythmia|afib|pacemaker|chest pains?)\b(?! rate)/i,
  "high-blood-pressure": /\b(?:high blood pressure|hypertension|hypertensive)\b/i,
  asthma: /\b(?:asthma|asthmatic|inhaler)\b/i,
  diabetes: /\b(?:diabet(?:es|ic)|insulin)\b/i,
  epilepsy: /\b(?:epilep(?:sy|tic)|seizures?)\b/i,
  hernia: /\bhernia\b/i,
  concussion: /\b(?:concuss(?:ion|ed)|head injury)\b/i,
  "past-rhabdomyolysis": /\brhabdo(?:myolysis)?\b/i,
  "past-heat-illness": /\b(?:heat ?stroke|heat (?:illness|exhaustion))\b/i,
  "sickle-cell-trait": /\bsickle[- ]cell\b/i,
  "recent-illness": /\b(?:flu|covid|fever|ill(?:ness)?|infection|antibiotics|sick)\b/i,
  "advised-by-doctor":
    /\b(?:doctor|physician|gp|surgeon|cardiologist|physio(?:therapist)?|surgery|operation)\b/i,
};

const HARM =
  /\b(?:injur(?:y|ed|ies)|hurts?|hurting|pain(?:s|ful)?|sore|ach(?:es?|ing|y)|cranky|tweak(?:ed|y)?|strain(?:ed)?|sprain(?:ed)?|torn|tear|tore|broken|fractur(?:e|ed)|surgery|operation|rehab|physio(?:therapist)?|doctor|cleared|swollen|numb|tingling|dislocat(?:ed|ion)|tendin(?:itis|opathy)|bad (?:knee|shoulder|back|wrist|ankle|hip|elbow)|pregnan(?:t|cy)|post-?\s?partum|not allowed|must not|should not|shouldn'?t|avoid(?:ing)?)\b/i;
/** The same in German, French, Spanish and Dutch. */
const HARM_ELSEWHERE =
  /\b(?:schmerz\w*|verletz\w*|zwickt|gereizt|operiert|arzt|douleurs?|douloureu\w+|bless(?:e|ee|ure)s?|operee?|medecin|dolor(?:es)?|duele|lesion\w*|pijn|geblesseerd|schwanger|enceinte|embarazada|zwanger)\b/i;
const NOT_TO_BE_DONE =
  /\b(?:no|not|never|without|kein\w*|nicht|ohne|pas d[e']|sans|sin|geen|zonder)\s*(?:[\w'-]+\s+)?(?:kip(?:ping)?|overhead|jump(?:s|ing)|running|squat(?:s|ting)?|deadlifts?|press(?:es|ing)|handstands?|inversions?|heavy|max(?:es)?|butterfl(?:y|ies)|snatch(?:es)?|jerks?|burpees?|pull-?ups?|muscle-?ups?)\b/i;

/**
 * Whether a note tells of harm, or of something not to be done; without that it may name joints and movements for other
 * reasons. `text` without accents; see `plainWords`.
 */
export const tellsOfHarm = (text: string): boolean =>
  [HARM, HARM_ELSEWHERE, NOT_TO_BE_DONE].some((pattern) => pattern.test(text));

/** A text without accents, as the patterns here expect it. */
export const plainWords = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "");

/** The words of a list whose pattern the text holds. */
export function wordsIn<W extends string>(patterns: Readonly<Record<W, RegExp>>, text: string): readonly W[] {
  const plain = plainWords(text);
  return (Object.keys(patterns) as W[]).filter((word) => patterns[word].test(plain));
}
