//! Photos signed by invented makers, with certificates made here.

use std::fs;
use std::io::Cursor;
use std::path::Path;

use baywitness::credentials::c2pa::{Builder, Context, DigitalSourceType, SigningAlg, create_signer};
use rcgen::{
    BasicConstraints, CertificateParams, CertifiedIssuer, DnType, ExtendedKeyUsagePurpose, IsCa, KeyPair,
    KeyUsagePurpose,
};
use serde_json::json;
use time::{Duration, OffsetDateTime};

/// A maker of cameras: its root, and a camera's certificate with its key.
pub(super) struct Maker {
    /// What an auditor is given.
    pub(super) root_pem: String,
    chain_pem: String,
    key_pem: String,
}

impl Maker {
    /// Whose cameras' certificates are valid from and to so many days from now.
    pub(super) fn valid(name: &str, days: [i64; 2]) -> Self {
        let named = |common: &str| {
            let mut params = CertificateParams::new(Vec::<String>::new()).unwrap();
            params.distinguished_name.push(DnType::OrganizationName, name);
            params.distinguished_name.push(DnType::CommonName, common);
            params.not_before = OffsetDateTime::now_utc() - Duration::days(3000);
            params.not_after = OffsetDateTime::now_utc() + Duration::days(3000);
            params
        };
        let mut root = named(&format!("{name} root"));
        root.is_ca = IsCa::Ca(BasicConstraints::Unconstrained);
        root.key_usages = vec![KeyUsagePurpose::KeyCertSign, KeyUsagePurpose::CrlSign];
        let root = CertifiedIssuer::self_signed(root, KeyPair::generate().unwrap()).unwrap();
        // C2PA technical specification, "Certificate profile": no CA, digitalSignature, an accepted purpose.
        let mut camera = named(&format!("{name} camera 1"));
        camera.is_ca = IsCa::ExplicitNoCa;
        camera.key_usages = vec![KeyUsagePurpose::DigitalSignature];
        camera.extended_key_usages = vec![ExtendedKeyUsagePurpose::EmailProtection];
        camera.use_authority_key_identifier_extension = true;
        camera.not_before = OffsetDateTime::now_utc() + Duration::days(days[0]);
        camera.not_after = OffsetDateTime::now_utc() + Duration::days(days[1]);
        let key = KeyPair::generate().unwrap();
        let camera = camera.signed_by(&key, &root).unwrap();
        Maker { root_pem: root.pem(), chain_pem: camera.pem() + &root.pem(), key_pem: key.serialize_pem() }
    }

    pub(super) fn new(name: &str) -> Self {
        Maker::valid(name, [-10, 300])
    }

    /// A photo with a manifest that lists these actions.
    pub(super) fn sign_with(&self, photo: &[u8], format: &str, actions: serde_json::Value) -> Vec<u8> {
        let signer =
            create_signer::from_keys(self.chain_pem.as_bytes(), self.key_pem.as_bytes(), SigningAlg::Es256, None)
                .unwrap();
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
