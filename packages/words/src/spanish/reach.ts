import type { reach as english } from '../english/reach.js';
import type { Reworded } from '../reworded.js';

/** As in `english/reach`. */
export const reach: Reworded<typeof english> = {
  title: 'Evenfall en un teléfono',
  plain:
    'Esta dirección no está cifrada: aquí no se muestra nada de nadie y no se puede escribir nada. Evenfall está en:',
  loopbackOnly:
    'Evenfall escucha solo en este equipo. Para llegar desde un teléfono de la misma red, deténgalo (Ctrl-C) y póngalo en marcha con: npx evenfall serve --lan (para la clínica inventada: npx evenfall serve --lan --demo).',
  addresses: 'En la red, Evenfall está en:',
  picture: 'La misma dirección para una cámara',
  pictureFirst:
    'Apunte la cámara del teléfono a esta imagen: abre la página que dice cómo confiar en Evenfall.',
  trustHeading: 'Una vez en cada teléfono: confíe en este equipo',
  trustWhy:
    'El certificado de este equipo lo hizo este equipo. Un teléfono que no conoce su autoridad le advierte, y debe hacerlo. No pase nunca por alto esa advertencia: dé a conocer primero la autoridad.',
  trustFetch: 'Descargue el certificado de la autoridad:',
  trustFile: 'evenfall-authority.crt',
  trustCheck:
    'Compruebe su huella SHA-256. Cuenta la que aparece en la pantalla del equipo que ejecuta Evenfall: compárela, par a par, con la que el teléfono muestra del fichero antes de instalarlo. Si un par difiere, pare: alguien está en medio.',
  trustIphone:
    'iPhone y iPad: abra el fichero; después Ajustes, General, VPN y gestión de dispositivos: instálelo. Después Ajustes, General, Información, Ajustes de confianza de los certificados: actívelo.',
  trustAndroid:
    'Android: Ajustes, Seguridad, Cifrado y credenciales, Instalar un certificado, Certificado de CA: elija el fichero.',
  trustComputer:
    'Otro ordenador: abra los ajustes del navegador, busque los certificados e impórtelo entre las autoridades.',
  trustThen: 'Después abra esta dirección y añádala a la pantalla de inicio:',
  trustBounds:
    'La autoridad solo puede responder por este equipo y por direcciones privadas, nunca por un sitio de internet. Para retirar la confianza, elimínela en el mismo lugar.',
  trustNames: 'Los nombres de estos ajustes cambian de una versión a otra (de memoria, sin releerlos).',
  fingerprint: 'Huella SHA-256 de la autoridad',
  givenCertificate: 'Muestra el certificado que se le dio.',
  explainedAt: 'Cómo llega un teléfono a confiar en él',
  openToAll:
    'En esta demostración nadie tiene que entrar: llega a ella cualquiera que esté en esta red. No escriba nunca nada de una persona real.',
};
