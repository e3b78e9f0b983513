/** How a phone reaches Evenfall: for a terminal, for the page that shows it, and for plain HTTP in a network. */
export const reach = {
  title: 'Evenfall on a phone',
  plain:
    'This address is not encrypted: nothing of anybody is shown here, and nothing can be typed. Evenfall itself is at:',
  loopbackOnly:
    'Evenfall listens on this computer only. To reach it from a phone in the same network, stop it (Ctrl-C) and start it with: npx evenfall serve --lan (for the invented clinic: npx evenfall serve --lan --demo).',
  addresses: 'In the network, Evenfall is at:',
  picture: 'The same address for a camera',
  pictureFirst:
    'Point the phone’s camera at this picture: it opens the page that says how to trust Evenfall.',
  trustHeading: 'Once on each phone: trust this computer',
  trustWhy:
    'The certificate of this computer was made by this computer. A phone that does not know its authority warns you, and must. Never go past that warning: make it known first.',
  trustFetch: 'Fetch the authority’s certificate:',
  trustFile: 'evenfall-authority.crt',
  trustCheck:
    'Check its SHA-256 fingerprint. What counts is the one on the screen of the computer that runs Evenfall: compare it, pair for pair, with the one that the phone shows of the file before you install it. If one pair differs, stop: somebody stands between you and it.',
  trustIphone:
    'iPhone and iPad: open the file, then Settings, General, VPN and Device Management: install it. Then Settings, General, About, Certificate Trust Settings: switch it on.',
  trustAndroid:
    'Android: Settings, Security, Encryption and credentials, Install a certificate, CA certificate: choose the file.',
  trustComputer:
    'Another computer: open the browser’s settings, search for certificates, and import it under authorities.',
  trustThen: 'Then open this address, and add it to the home screen:',
  trustBounds:
    'The authority can vouch for this computer and for private addresses alone, never for a site of the internet. To take the trust back, remove it in the same place.',
  trustNames: 'The names of these settings differ from version to version (from memory, not read again).',
  fingerprint: 'SHA-256 fingerprint of the authority',
  givenCertificate: 'It shows the certificate that it was given.',
  explainedAt: 'How a phone comes to trust it',
  openToAll:
    'Nobody needs to sign in to this demo: whoever is in this network reaches it. Never write anything of a real person into it.',
} as const;
