//! Photos signed by invented makers, with certificates made here.

use std::fs;
use std::io::Cursor;
use std::path::Path;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use baywitness::credentials::c2pa::{Builder, Context, DigitalSourceType, SigningAlg, create_signer};
use rcgen::{
    BasicConstraints, CertificateParams, CertifiedIssuer, DnType, ExtendedKeyUsagePurpose, IsCa, Issuer, KeyPair,
    KeyUsagePurpose,
};
use serde_json::json;
use time::{Duration, OffsetDateTime};

/// A maker of cameras: its root, and a camera's certificate with its key.
pub(super) struct Maker {
    /// What an auditor is given.
    pub(super) root_pem: String,
    chain_pem: String,
    key: KeyPair,
    camera: CertificateParams,
}

/// RFC 7468.
fn pem(label: &str, der: &[u8]) -> String {
    let text = STANDARD.encode(der);
    let lines: Vec<&str> = text.as_bytes().chunks(64).map(|line| std::str::from_utf8(line).unwrap()).collect();
    format!("-----BEGIN {label}-----\n{}\n-----END {label}-----\n", lines.join("\n"))
}

fn named(maker: &str, common: &str) -> CertificateParams {
    let mut params = CertificateParams::new(Vec::<String>::new()).unwrap();
    params.distinguished_name.push(DnType::OrganizationName, maker);
    params.distinguished_name.push(DnType::CommonName, common);
    params.not_before = OffsetDateTime::now_utc() - Duration::days(3000);
    params.not_after = OffsetDateTime::now_utc() + Duration::days(3000);
    params
}

/// C2PA technical specification, "Certificate profile": no authority, digitalSignature, an accepted purpose.
fn camera(maker: &str, common: &str, ends: OffsetDateTime) -> CertificateParams {
    let mut camera = named(maker, common);
    camera.is_ca = IsCa::ExplicitNoCa;
    camera.key_usages = vec![KeyUsagePurpose::DigitalSignature];
    camera.extended_key_usages = vec![ExtendedKeyUsagePurpose::EmailProtection];
    camera.use_authority_key_identifier_extension = true;
    camera.not_before = OffsetDateTime::now_utc() - Duration::days(10);
    camera.not_after = ends;
    camera
}

impl Maker {
    /// Whose cameras' certificates are valid until then.
    pub(super) fn until(name: &str, ends: OffsetDateTime) -> Self {
        let mut root = named(name, &format!("{name} root"));
        root.is_ca = IsCa::Ca(BasicConstraints::Unconstrained);
        root.key_usages = vec![KeyUsagePurpose::KeyCertSign, KeyUsagePurpose::CrlSign];
        let root = CertifiedIssuer::self_signed(root, KeyPair::generate().unwrap()).unwrap();
        let camera = camera(name, &format!("{name} camera 1"), ends);
        let key = KeyPair::generate().unwrap();
        let certificate = pem("CERTIFICATE", camera.signed_by(&key, &root).unwrap().der());
        let root_pem = pem("CERTIFICATE", root.der());
        Maker { chain_pem: certificate + &root_pem, root_pem, key, camera }
    }

    pub(super) fn new(name: &str) -> Self {
        Maker::until(name, OffsetDateTime::now_utc() + Duration::days(300))
    }

    /// Somebody with a camera of this maker who makes certificates with its key, as if it were an authority.
    pub(super) fn forger(self) -> Self {
        let mut claimed = self.camera;
        // The tool would refuse what the certificate does not allow.
        claimed.key_usages.clear();
        let issuer = Issuer::new(claimed, self.key);
        let camera =
            camera("Invented Optics", "Invented Optics camera 2", OffsetDateTime::now_utc() + Duration::days(100));
        let key = KeyPair::generate().unwrap();
        let certificate = pem("CERTIFICATE", camera.signed_by(&key, &issuer).unwrap().der());
        Maker { chain_pem: certificate + &self.chain_pem, root_pem: self.root_pem, key, camera }
    }

    /// A photo with a manifest that lists these actions.
    pub(super) fn sign_with(&self, photo: &[u8], format: &str, actions: serde_json::Value) -> Vec<u8> {
        let key = pem("PRIVATE KEY", &self.key.serialize_der());
        let signer =
            create_signer::from_keys(self.chain_pem.as_bytes(), key.as_bytes(), SigningAlg::Es256, None).unwrap();
        let definition = json!({
            "claim_generator_info": [{ "name": "Invented Camera", "version": "3" }],
            "assertions": [{ "label": "c2pa.actions", "data": { "actions": actions } }],
        });
        let mut builder = Builder::from_context(Context::new()).with_definition(definition.to_string()).unwrap();
        let mut signed = Cursor::new(Vec::new());
        builder.sign(signer.as_ref(), format, &mut Cursor::new(photo.to_vec()), &mut signed).unwrap();
        signed.into_inner()
    }

    /// A photo as a camera signs it that just took it.
    pub(super) fn sign(&self, photo: &[u8], format: &str) -> Vec<u8> {
        let capture = serde_json::to_value(DigitalSourceType::DigitalCapture).unwrap();
        self.sign_with(photo, format, json!([{ "action": "c2pa.created", "digitalSourceType": capture }]))
    }

    /// Signs every photo of a job where it lies.
    pub(super) fn sign_job(&self, job: &Path) {
        for name in ["photos/a.jpg", "photos/b.jpg"] {
            let path = job.join(name);
            fs::write(&path, self.sign(&fs::read(&path).unwrap(), "image/jpeg")).unwrap();
        }
    }

    /// Its root as a file.
    pub(super) fn anchors(&self, folder: &Path) -> String {
        let file = folder.join("anchors.pem");
        fs::write(&file, &self.root_pem).unwrap();
        file.to_str().unwrap().to_owned()
    }
}
