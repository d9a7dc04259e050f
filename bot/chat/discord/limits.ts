/** What Discord accepts, from its documentation (resources/message, components/reference, interactions/application-commands). */
export const LIMITS = {
  contentCharacters: 2000,
  files: 10,
  /** Where the interaction does not say what its server allows. */
  fileBytes: 10 * 1024 * 1024,
  requestBytes: 25 * 1024 * 1024,
  altTextCharacters: 1024,
  rows: 5,
  buttonsPerRow: 5,
  buttonLabelCharacters: 80,
  customIdCharacters: 100,
  formFields: 5,
  formTitleCharacters: 45,
  formLabelCharacters: 45,
  suggestions: 25,
  suggestionCharacters: 100,
  commands: 100,
  options: 25,
  choices: 25,
  descriptionCharacters: 100,
  commandCharacters: 8000,
  nonceCharacters: 25,
} as const;
